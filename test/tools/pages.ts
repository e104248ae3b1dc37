// The sheets as a browser shows and prints them: `npm run pages` (not part of the tests) opens each in headless Chromium,
// takes pictures at the widths of a desk and of a phone and in grey, prints A4 and Letter, and fails where a page is too
// many, something is cut off or lies on something else, a heading stands alone at the foot, or axe-core finds a barrier.
// Needs Chromium and poppler (`apt-get install chromium poppler-utils fonts-liberation`); pictures go to the folder named on
// the command line, else to the folder for temporary files.
import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, chromium, type Page } from "playwright-core";
import { benchSheet, bottleLabel, evaluateRun, findRoutes, planPreparation, planSequence } from "preparative";
import { SHEETS } from "../../docs/examples/sheets";

/** A document to look at, made for a size of paper. */
interface Document {
  readonly name: string;
  readonly html: (page: "A4" | "Letter") => string;
  /** Pages it may have; undefined where the number follows from what is in it. */
  readonly pages?: number;
  /** It is a page of its own size. */
  readonly label?: boolean;
}

const plans = Object.entries(SHEETS).map(([name, request]) => [name, planPreparation(request)] as const);
const zinc = plans[0]![1];
const run = evaluateRun(zinc, {
  weighed: { "moss killer": "248.6 g", "washing soda": "430.2 g" },
  measured: { "moss killer": "1.30 L" },
  wetCake: "540 g",
  washes: 3,
  tests: { filtrate: "clear", lastWash: "clear" },
  dried: ["149.8 g", "143.1 g", "143.0 g"],
});
const chain = planSequence({
  steps: [
    {
      equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
      product: "CaCO3",
      productName: "chalk",
      materials: [
        { name: "de-icer", form: "CaCl2·2H2O" },
        { name: "soda ash", form: "Na2CO3", excess: "5 %" },
      ],
    },
    { equation: "CaCO3 -> CaO + CO2", product: "CaO", materials: [{ name: "chalk", form: "CaCO3" }] },
  ],
  wanted: "10 g",
});
const [route] = findRoutes({
  target: "Zn(CH3COO)2·2H2O",
  shelf: [
    { name: "moss killer", form: "ZnSO4·7H2O" },
    { name: "washing soda", form: "Na2CO3·10H2O" },
    { name: "vinegar", form: "CH3COOH", strength: "5 %", density: "1.006 g/mL" },
  ],
  wanted: "20 g",
}).routes;
const bench = { format: "html", parts: ["bench"] } as const;

const DOCUMENTS: readonly Document[] = [
  ...plans.map(([name, plan]) => ({
    name,
    html: (page: "A4" | "Letter") => benchSheet(plan, { ...bench, page }),
    pages: 2,
  })),
  { name: "with-basis", html: (page) => benchSheet(plans[2]![1], { format: "html", page }) },
  { name: "run", html: (page) => benchSheet(run, { format: "html", page }), pages: 1 },
  { name: "chain", html: (page) => benchSheet(chain, { ...bench, page }) },
  ...(route === undefined
    ? []
    : [{ name: "route", html: (page: "A4" | "Letter") => benchSheet(route, { ...bench, page }) }]),
  { name: "class", html: (page) => benchSheet(zinc, { ...bench, page, groups: 8 }), pages: 4 },
  { name: "label-large", html: () => bottleLabel(run, { format: "html" }), pages: 1, label: true },
  {
    name: "label-small",
    html: () => bottleLabel("CuSO4·5H2O", { format: "html", size: "60 x 30 mm" }),
    pages: 1,
    label: true,
  },
];

const CHROMIUM = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];
const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const folder = process.argv[2] ?? join(tmpdir(), "preparative-pages");
const faults: string[] = [];

/** What is cut off or lies on something else, as the browser has laid it out. */
const layoutFaults = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    const width = document.documentElement.clientWidth;
    if (document.documentElement.scrollWidth > width + 1)
      found.push(`wider than the window: ${document.documentElement.scrollWidth} of ${width}`);
    for (const element of document.querySelectorAll("article *, main *")) {
      const box = element.getBoundingClientRect();
      if (box.width > 0 && box.right > width + 1)
        found.push(
          `cut off at the right: <${element.tagName.toLowerCase()}> ${(element.textContent ?? "").slice(0, 40)}`,
        );
    }
    for (const svg of document.querySelectorAll("svg:not(.pictogram)")) {
      const edge = svg.getBoundingClientRect();
      const words = [...svg.querySelectorAll("text")].map((text) => ({
        text: text.textContent ?? "",
        box: text.getBoundingClientRect(),
      }));
      for (const { text, box } of words)
        if (
          box.left < edge.left - 1 ||
          box.right > edge.right + 1 ||
          box.top < edge.top - 1 ||
          box.bottom > edge.bottom + 1
        )
          found.push(`outside its picture: ${text}`);
      words.forEach((one, i) => {
        for (const other of words.slice(i + 1)) {
          const [a, b] = [one.box, other.box];
          const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
          const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
          if (across > 1 && down > 3) found.push(`words on words: ${one.text} / ${other.text}`);
        }
      });
    }
    const small = [...document.querySelectorAll(".bench-sheet *")].filter((element) => {
      const own = [...element.childNodes].some((node) => node.nodeType === 3 && (node.textContent ?? "").trim() !== "");
      return (
        own && element.closest("svg,sub,sup") === null && Number.parseFloat(getComputedStyle(element).fontSize) < 11.3
      );
    });
    for (const element of small.slice(0, 3)) found.push(`under 8.5 pt: ${(element.textContent ?? "").slice(0, 40)}`);
    return found;
  });

/** Barriers that are serious or worse. */
async function barriers(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  const results = await page.evaluate(() =>
    (
      globalThis as unknown as {
        axe: { run: () => Promise<{ violations: { id: string; impact: string; help: string }[] }> };
      }
    ).axe.run(),
  );
  return results.violations
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .map(({ id, help }) => `axe: ${id}: ${help}`);
}

const textOfPage = (pdf: string, page: number): string =>
  execFileSync("pdftotext", ["-layout", "-f", String(page), "-l", String(page), pdf, "-"], { encoding: "utf8" });

/** Faults of what is printed: pages, and headings alone at a foot. */
function printFaults(pdf: string, { pages }: Document, headings: ReadonlySet<string>): string[] {
  const info = execFileSync("pdfinfo", [pdf], { encoding: "utf8" });
  const count = Number(/Pages:\s+(\d+)/.exec(info)?.[1]);
  const found = pages !== undefined && count > pages ? [`${count} pages, ${pages} at most`] : [];
  for (let page = 1; page <= count; page += 1) {
    const lines = textOfPage(pdf, page)
      .split("\n")
      .map((line) => line.trim())
      .filter((line) => line !== "" && !/^\d+ \/ \d+$/.test(line));
    const last = lines.at(-1) ?? "";
    if (headings.has(last)) found.push(`page ${page} ends with the heading "${last}"`);
    if (lines.length === 0) found.push(`page ${page} is empty`);
  }
  return found;
}

async function look(browser: Browser, document: Document): Promise<void> {
  const { name, html, label = false } = document;
  const note = (where: string, found: readonly string[]): void => {
    for (const fault of found) faults.push(`${name}, ${where}: ${fault}`);
  };
  for (const width of label ? [1280] : [1280, 390]) {
    const page = await browser.newPage({ viewport: { width, height: 900 } });
    page.on("request", (request) =>
      note(
        "request",
        [request.url()].filter((url) => !/^(?:about|data):/.test(url)),
      ),
    );
    await page.setContent(html("A4"));
    // The loader that runs this file names functions by a helper that the page does not have.
    await page.evaluate("globalThis.__name = (one) => one");
    note(`${width} px`, [...(await layoutFaults(page)), ...(await barriers(page))]);
    await page.screenshot({ path: join(folder, `${name}-${width}.png`), fullPage: true });
    if (width === 1280) {
      await page.addStyleTag({ content: "html{filter:grayscale(1)}" });
      await page.screenshot({ path: join(folder, `${name}-grey.png`), fullPage: true });
    }
    await page.close();
  }
  for (const paper of ["A4", "Letter"] as const) {
    const page = await browser.newPage();
    await page.setContent(html(paper));
    const headings = new Set(await page.$$eval("h1,h2", (all) => all.map((one) => (one.textContent ?? "").trim())));
    const pdf = join(folder, `${name}-${paper}.pdf`);
    writeFileSync(pdf, await page.pdf({ preferCSSPageSize: true, printBackground: true }));
    note(paper, printFaults(pdf, document, headings));
    execFileSync("pdftoppm", ["-r", "90", "-png", pdf, pdf.replace(/\.pdf$/, "")]);
    await page.close();
  }
}

const executablePath = process.env["CHROMIUM"] ?? CHROMIUM.find((path) => existsSync(path));
if (executablePath === undefined) throw new Error("no Chromium: install it, or name it in CHROMIUM");
mkdirSync(folder, { recursive: true });
const browser = await chromium.launch({ executablePath, args: ["--no-sandbox"] });
for (const document of DOCUMENTS) await look(browser, document);
await browser.close();
for (const fault of faults) console.log(fault);
console.log(`${DOCUMENTS.length} documents, ${faults.length} faults; pictures in ${folder}`);
process.exitCode = faults.length === 0 ? 0 : 1;
