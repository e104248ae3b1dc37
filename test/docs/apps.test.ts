// The small programs of docs/examples: each does its job, in less than a hundred lines.
import { readdirSync, readFileSync } from "node:fs";
import { IDBFactory } from "fake-indexeddb";
import { findRoutes, type Plan, planPreparation, type Route } from "preparative";
import { describe, expect, it } from "vitest";
import { balancingForm } from "../../docs/examples/balancing-form";
import { convert } from "../../docs/examples/hydrate-converter";
import { ofNode, ofSqlJs, planStore } from "../../docs/examples/plan-store-sqlite";
import { JARS, labelsFor } from "../../docs/examples/stockroom-labels";
import { worksheet } from "../../docs/examples/titration-worksheet";

const folder = new URL("../../docs/examples/", import.meta.url);

describe("programs of docs/examples", () => {
  it("are short", () => {
    const files = readdirSync(folder).filter((name) => name.endsWith(".ts") && !/^(?:sheets|studio)/.test(name));
    expect(files.length).toBeGreaterThanOrEqual(4);
    for (const file of files) {
      expect(readFileSync(new URL(file, folder), "utf8").split("\n").length, file).toBeLessThan(100);
    }
  });

  it("balance while somebody types, key by key", () => {
    const whole = "Fe + O2 -> Fe2O3";
    const states = [...whole].map((_, i) => balancingForm(whole.slice(0, i + 1)).status);
    // F, Fe and Fe2 are products that do not balance; nothing else on the way is called wrong
    expect(states.filter((state) => state === "wrong")).toHaveLength(3);
    expect(states.at(-1)).toBe("balanced");
    expect(balancingForm(whole).lines).toEqual([
      "4 Fe + 3 O₂ → 2 Fe₂O₃",
      "Fe: 4 × 1 = 2 × 2 = 4",
      "O: 3 × 2 = 2 × 3 = 6",
    ]);
    expect(balancingForm("Fe + Ox -> Fe2O3").lines.slice(1, 3)).toEqual(["Fe + Ox -> Fe2O3", "      ^"]);
    expect(balancingForm("C + O2 -> CO + CO2").lines).toContain("one of: C + O2 -> CO2");
    expect(balancingForm("").status).toBe("empty");
  });

  it("convert one form of a salt into another, and ask where a word leaves it open", () => {
    // by hand: 12.5 g × 249.677 / 159.602 = 19.5547 g
    expect(convert("12.5 g", "CuSO4", "blue vitriol")).toEqual([
      "12.5 g of CuSO₄ 159.60 g/mol",
      "is as much as 19.55 g of CuSO₄·5H₂O 249.68 g/mol",
      "sold as CuSO₄·H₂O, CuSO₄·5H₂O",
    ]);
    expect(() => convert("1 g", "washing soda", "Na2CO3")).toThrow(/may be Na2CO3·10H2O/);
  });

  it("carry a strength from the primary standard to the vinegar", () => {
    // by hand: acid 0.1325 × 0.999 × 2 / 105.99 / 0.02497 = 0.1000; lye 24.425/25 of it; vinegar 0.0977 × 17.30 × 60.05 / 2000
    const lines = worksheet();
    expect(lines[0]).toMatch(/^acid {6}0\.1000 ± 0\.000\d mol\/L$/);
    expect(lines[1]).toMatch(/^lye {7}0\.097[67] ± 0\.000\d mol\/L$/);
    expect(lines[2]).toMatch(/^vinegar {3}5\.0[78] ± 0\.0\d % w\/w acetic acid$/);
    expect(lines.join("\n")).toContain("titre 3, 25.90 mL, does not count: run past the colour change");
  });

  it("print labels, and list what a person must decide", () => {
    const { pages, open } = labelsFor(JARS);
    expect(pages.map((page) => page.formula)).toEqual(["CuSO4·5H2O", "Na2CO3·10H2O", "H2SO4", "NaCl"]);
    expect(pages[2]!.html).toContain("H314");
    expect(open.map((line) => line.split(":")[0])).toEqual(["washing soda", "blue stuff, Tom's"]);
  });

  const plan = planPreparation({
    equation: "CuSO4 + Na2CO3 + H2O -> Cu2(OH)2CO3 + Na2SO4 + CO2",
    product: "Cu2(OH)2CO3",
    materials: [
      { name: "blue vitriol", form: "CuSO4·5H2O" },
      { name: "soda", form: "Na2CO3", excess: "5 %" },
    ],
    scale: { material: "blue vitriol", portion: "50 g" },
  });

  it.each([
    ["that Node brings", ofNode],
    ["of a library", ofSqlJs],
  ])("keep plans in the SQLite %s", async (_, open) => {
    const database = await open();
    if (database === undefined) {
      // Node has it from 22 on
      expect(Number(process.versions.node.split(".")[0])).toBeLessThan(22);
      return;
    }
    const store = planStore(database);
    const id = store.put(plan);
    store.put(plan);
    const again = store.get(id)!;
    expect(String(again)).toBe(String(plan));
    expect(again.moved).toEqual([]);
    expect(store.list("Cu₂(OH)₂CO₃")).toHaveLength(2);
    expect(store.list("CaO")).toEqual([]);
    expect(store.get(99)).toBe(undefined);
  });

  it("keep plans and routes in the database of a browser", async () => {
    globalThis.indexedDB = new IDBFactory();
    const { openStore } = await import("../../docs/examples/plan-store-browser");
    const store = await openStore("bench");
    const [route] = findRoutes({ target: "CaO", shelf: [{ name: "whiting", form: "CaCO3" }] }).routes;
    await store.put("malachite", plan);
    await store.put("lime", route!);
    expect(await store.keys()).toEqual(["lime", "malachite"]);
    expect(String((await store.get("malachite")) as Plan)).toBe(String(plan));
    expect(String((await store.get("lime")) as Route)).toBe(String(route));
    expect(await store.get("nothing")).toBe(undefined);
    store.close();
    Reflect.deleteProperty(globalThis, "indexedDB");
  });

  it("print a sheet for a class from a list of groups", async () => {
    const { classSheets } = await import("../../docs/examples/class-sheet");
    const { whole, tables } = classSheets(["oak", "ash", "elm"]);
    expect(whole).toMatch(/^Class of 3 groups/);
    // by hand: 3 × 25 g = 75 g of blue vitriol
    expect(whole).toMatch(/75(\.0)? g/);
    expect(tables).toHaveLength(3);
    expect(tables[1]).toMatch(/^Table ash\n[\s\S]*25\.0 g/);
  });
});
