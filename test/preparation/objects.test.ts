// Plans, runs, chains and substances as other programs keep them: what a caller does to what was given or handed out
// changes no answer, in state libraries, consoles and databases alike.
import { inspect } from "node:util";
import {
  balance,
  benchSheet,
  bottleLabel,
  type ChainRequest,
  evaluateRun,
  fromJSON,
  isPreparativeError,
  knownHydrates,
  type PlanRequest,
  parseFormula,
  planFromJSON,
  planPreparation,
  planSequence,
  quantity,
  shelfMaterialOf,
  shopMaterial,
  solubilityOf,
  substance,
} from "preparative";
import { describe, expect, it } from "vitest";

type Loose = Record<string, unknown>;

const request = (): PlanRequest => ({
  title: "chalk",
  equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
  product: "CaCO3",
  materials: [
    { name: "de-icer", form: "CaCl2·2H2O", pack: { size: "1 kg", price: "3 EUR" } },
    { name: "soda", form: "Na2CO3", excess: "5 %" },
  ],
  scale: { product: "20 g" },
  washing: { residue: "0.5 %" },
});

const chainRequest = (): ChainRequest => ({
  steps: [
    {
      equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
      product: "CaCO3",
      productName: "chalk",
      materials: [
        { name: "de-icer", form: "CaCl2·2H2O" },
        { name: "soda", form: "Na2CO3" },
      ],
    },
    { equation: "CaCO3 -> CaO + CO2", product: "CaO", materials: [{ name: "chalk", form: "CaCO3" }] },
  ],
  wanted: "56.077 g",
});

/** The code and the message of what a call refuses. */
function refusal(call: () => unknown): string {
  try {
    call();
  } catch (error) {
    if (isPreparativeError(error)) return `${error.code}: ${error.message}`;
    throw error;
  }
  return "nothing refused";
}

describe("a form that is edited afterwards", () => {
  it("changes no plan", () => {
    const form = request() as unknown as { [key: string]: unknown; materials: Loose[]; scale: Loose };
    const plan = planPreparation(form as unknown as PlanRequest);
    const [text, sheet] = [JSON.stringify(plan), benchSheet(plan)];
    form.scale["product"] = "40 g";
    form.materials[0]!["name"] = "zzz";
    form.materials[0]!["form"] = "CaCl2";
    form.materials.pop();
    form["title"] = "other";
    form["handlingLoss"] = "50 %";
    expect(JSON.stringify(plan)).toBe(text);
    expect(benchSheet(plan)).toBe(sheet);
    expect(benchSheet(planFromJSON(JSON.parse(text)))).toBe(sheet);
    const observed = { weighed: { "de-icer": "29 g" }, dried: "19 g" } as const;
    expect(String(evaluateRun(plan, observed).percentYield)).toBe(
      String(evaluateRun(planPreparation(request()), observed).percentYield),
    );
  });

  it("changes no run", () => {
    const dried: `${number} g`[] = ["20 g", "19 g"];
    const run = evaluateRun(planPreparation(request()), { dried });
    dried.push("1 g");
    expect(run.observations.dried).toEqual(["20 g", "19 g"]);
    expect(run.percentYield!.in("%").toNumber()).toBeCloseTo(95, 0);
  });

  it("changes no chain", () => {
    const form = chainRequest();
    const chain = planSequence(form);
    const text = JSON.stringify(chain);
    (form.steps as unknown[]).pop();
    (form.steps[0] as unknown as Loose)["product"] = "NaCl";
    expect(JSON.stringify(chain)).toBe(text);
  });

  it("is read through the proxies of a state library", () => {
    const reactive = <T extends object>(target: T): T =>
      new Proxy(target, {
        get: (object, key, receiver) => {
          const value: unknown = Reflect.get(object, key, receiver);
          return typeof value === "object" && value !== null ? reactive(value) : value;
        },
      });
    expect(JSON.stringify(planPreparation(reactive(request())))).toBe(JSON.stringify(planPreparation(request())));
  });
});

describe("a known form", () => {
  it("shows and tells what it is", () => {
    const forms = knownHydrates("CuSO4");
    expect(forms.map(String)).toEqual(["CuSO4", "CuSO4.H2O", "CuSO4.3H2O", "CuSO4.5H2O"]);
    expect(inspect(forms[3])).toBe("HydrateForm { CuSO4.5H2O }");
    const data = JSON.parse(JSON.stringify(forms[3]));
    expect(data).toMatchObject({ formula: "CuSO4.5H2O", waters: "5" });
    expect(structuredClone(forms[3]!.toJSON())).toEqual(forms[3]!.toJSON());
  });
});

describe("what is handed out", () => {
  const plan = planPreparation(request());
  const run = evaluateRun(plan, { dried: ["20 g", "19 g"] });
  const chain = planSequence(chainRequest());
  const values: readonly (readonly [string, object])[] = [
    ["Plan", plan],
    ["Run", run],
    ["Chain", chain],
    ["Substance", substance("Epsom salt")],
    ["Solubility", solubilityOf("NaCl", "20 °C")],
    ["Quantity", quantity("12.5(2) g")],
    ["Formula", parseFormula("CuSO4·5H2O")],
    ["BalancedEquation", balance("H2 + O2 -> H2O")],
  ];

  it.each(values)("%s is an instance of a class that says what it is", (name, value) => {
    expect(value.constructor.name).toBe(name);
    expect(Object.prototype.toString.call(value)).toBe(`[object ${name}]`);
    expect(inspect(value)).toMatch(new RegExp(`^${name} \\{ .+ \\}$`));
    expect(String(value)).not.toContain("[object");
    expect(inspect(value)).toContain(String(value));
    expect(inspect(Object.getPrototypeOf(value))).toContain(name);
  });

  // A formula is read too often to be frozen: its fields are getters.
  it.each(values)("%s cannot be altered", (name, value) => {
    expect(Object.isFrozen(value) || name === "Formula").toBe(true);
    const before = JSON.stringify(value);
    for (const key of ["formula", "text", "charge", "value", "equation", "title", "request", "name"])
      expect(Reflect.set(value, key, "spoilt") && name !== "Formula", key).toBe(false);
    expect(JSON.stringify(value)).toBe(before);
  });

  it.each(values)("%s is left in peace by state libraries", (name, value) => {
    // They wrap what can be extended and is an object like any other by its tag, or by its prototype.
    const tag = Object.prototype.toString.call(value);
    expect(tag).toBe(`[object ${name}]`);
    expect([Object.prototype, null]).not.toContain(Object.getPrototypeOf(value));
  });

  it.each(values.slice(0, 4))("%s answers through a proxy that wraps it all the same", (_, value) => {
    const shallow = new Proxy(value, { get: (object, key, receiver) => Reflect.get(object, key, receiver) as unknown });
    for (const key of [...Object.keys(value), "toJSON"])
      expect(() => (shallow as Loose)[key], `reading ${key}`).not.toThrow();
    expect(JSON.stringify(shallow)).toBe(JSON.stringify(value));
    expect(String(shallow)).toBe(String(value));
  });

  it("is frozen through, wherever one looks", () => {
    const seen = new Set<unknown>();
    const open: string[] = [];
    const walk = (value: unknown, path: string): void => {
      if (typeof value !== "object" || value === null || seen.has(value)) return;
      seen.add(value);
      if (!Object.isFrozen(value)) open.push(path);
      for (const [key, part] of Object.entries(value)) walk(part, `${path}.${key}`);
    };
    walk(plan, "plan");
    walk(run, "run");
    walk(chain, "chain");
    walk(run.asMaterial(), "material");
    expect(open).toEqual([]);
  });

  it.each(values)("%s has a record of plain data, with type, schema and release", (_, value) => {
    const record = (value as { toJSON(): Loose }).toJSON();
    expect(structuredClone(record)).toEqual(record);
    expect(JSON.parse(JSON.stringify(record))).toEqual(JSON.parse(JSON.stringify(structuredClone(record))));
    expect(record).toMatchObject({ type: expect.any(String), schema: 1, library: expect.stringMatching(/^\d+\.\d+/) });
    expect(JSON.stringify(fromJSON(structuredClone(record)))).toBe(JSON.stringify(value));
  });

  it("has a plain record also where values of the library were given", () => {
    const given = planPreparation({
      ...request(),
      materials: [{ name: "de-icer", form: parseFormula("CaCl2·2H2O"), assay: quantity("95(1) %") }, asSoda()],
      // kept as the value it stands for
      scale: { product: { value: "20", unit: "g" } },
    });
    const record = given.toJSON();
    expect(structuredClone(record)).toEqual(record);
    expect(JSON.stringify(planFromJSON(structuredClone(record)))).toBe(JSON.stringify(given));
  });
});

const asSoda = () => {
  const shelf = shelfMaterialOf(shopMaterial("washing soda").candidates[2]!);
  return { ...shelf, excess: "5 %" as const };
};

describe("a figure that moved", () => {
  it("is told when a plan is read back, and printed on its sheet", () => {
    const record = structuredClone(planPreparation(request()).toJSON()) as unknown as { figures: Loose[] };
    const theory = record.figures.find((one) => one["what"] === "CaCO₃: theoretical yield")!;
    const now = theory["text"];
    theory["text"] = "21.0 g";
    const back = planFromJSON(record);
    expect(back.moved).toEqual([{ what: "CaCO₃: theoretical yield", was: "21.0 g", now }]);
    expect(benchSheet(back)).toContain("Moved since it was saved");
    expect(planFromJSON(planPreparation(request()).toJSON()).moved).toEqual([]);
  });
});

describe("senseless values", () => {
  const gas: PlanRequest = {
    equation: "CaCO3 + HCl -> CaCl2 + CO2 + H2O",
    product: "CaCl2",
    materials: [
      { name: "chalk", form: "CaCO3" },
      { name: "acid", form: "HCl", strength: "10 %" },
    ],
    scale: { product: "20 g" },
  };

  it.each([
    [{ pressure: "-5 kPa" }, "plan.not-positive: pressure"],
    [{ pressure: "5 g" }, "quantity.wrong-dimension: expected a pressure"],
    [{ temperature: "-300 °C" }, "plan.request: temperature"],
    [{ temperature: "500 °C" }, "plan.request: temperature"],
    [{ washing: { residue: "-1 %" } }, "plan.not-positive: washing.residue"],
    [{ washing: { washVolume: "5 g" } }, "quantity.wrong-dimension: washing.washVolume"],
    [{ washing: "x" }, "plan.request: washing"],
    [{ room: "x" }, "plan.request: room"],
    [{ title: 5 }, "plan.request: title"],
    [{ productName: {} }, "plan.request: productName"],
    [{ productName: " " }, "plan.request: productName"],
    [{ alternatives: "CaCO3" }, "plan.request: alternatives"],
    [{ alternatives: [5] }, "plan.request: alternatives[0]"],
    [{ acknowledge: "I did not read hypochlorite-acid" }, "plan.acknowledge: acknowledge"],
    [{ temprature: "20 °C" }, "plan.unknown-option: there is no option 'temprature'"],
    [{ scale: { prodct: "5 g" } }, "plan.unknown-option: there is no option 'prodct' in scale"],
    [{ washing: { residu: "1 %" } }, "plan.unknown-option: there is no option 'residu' in washing"],
    [{ materials: undefined }, "plan.request"],
    [{ product: undefined }, "plan.request: product must be text, not undefined"],
    [{ equation: undefined }, "plan.request: equation must be text"],
    [{ materials: [{ name: "chalk" }] }, "plan.request: materials[0].form must be text, not undefined"],
    [{ materials: [null] }, "plan.request: materials[0]"],
  ])("%j is refused at the door", (spoilt, expected) => {
    expect(refusal(() => planPreparation({ ...gas, ...spoilt } as unknown as PlanRequest))).toContain(expected);
  });

  it.each([
    [{ asay: "50 %" }, "there is no option 'asay' in materials[0]"],
    [{ name: "" }, "materials[0].name"],
    [{ name: 5 }, "materials[0].name"],
    [{ note: {} }, "note of chalk"],
    [{ available: "-5 g" }, "available of chalk"],
    [{ inExcess: "yes" }, "inExcess of chalk"],
    [{ pack: { size: "1 kg", price: "-5 EUR" } }, "pack.price of chalk"],
    [{ pack: "1 kg" }, "materials[0].pack"],
    [{ pack: { size: "0 kg", price: "5 EUR" } }, "pack.size of chalk"],
  ])("a material with %j is refused at the door", (spoilt, expected) => {
    const [chalk, acid] = gas.materials;
    const materials = [{ ...chalk, ...spoilt }, acid];
    expect(refusal(() => planPreparation({ ...gas, materials } as unknown as PlanRequest))).toContain(expected);
  });

  it.each([
    [{ weihged: {} }, "plan.unknown-option: there is no option 'weihged'"],
    [{ ignition: { before: "1 g", aftr: "1 g" } }, "plan.unknown-option: there is no option 'aftr' in ignition"],
    [{ note: 5 }, "plan.observation: note"],
    [{ temperature: "400 °C" }, "plan.request: temperature"],
    [[], "plan.observation"],
  ])("observations %j are refused", (observations, expected) => {
    expect(refusal(() => evaluateRun(planPreparation(gas), observations as never))).toContain(expected);
  });

  it("a run needs a plan", () => {
    for (const none of [undefined, null, {}, "plan"])
      expect(refusal(() => evaluateRun(none as never, { dried: "5 g" }))).toContain("plan.request: a run is recorded");
  });

  it("a misspelt field of a chain is refused, wherever it stands", () => {
    const misspelt = { ...chainRequest(), wantd: "1 g" };
    expect(refusal(() => planSequence(misspelt as never))).toContain("there is no option 'wantd'");
    const [first, second] = chainRequest().steps;
    const inStep = { ...chainRequest(), steps: [{ ...first, expectedYeild: "50 %" }, second] };
    expect(refusal(() => planSequence(inStep as never))).toContain("there is no option 'expectedYeild' in steps[0]");
    expect(refusal(() => planSequence({ ...chainRequest(), steps: [null] } as never))).toContain(
      "plan.request: steps[0]",
    );
  });

  it("a misspelt option of sheet and label is refused", () => {
    const plan = planPreparation(gas);
    expect(refusal(() => benchSheet(plan, { fromat: "html" } as never))).toContain("there is no option 'fromat'");
    expect(refusal(() => bottleLabel(plan, { date: {} } as never))).toContain("sheet.bad-option: date must be text");
  });
});
