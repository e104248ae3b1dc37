// Every function that takes options, a request or a record: each option with a letter left out is refused, with the
// option that was meant in the hint. The functions and their options are read out of the types, so a new one is tested as
// soon as it is exported.
import { fileURLToPath } from "node:url";
import * as preparative from "preparative";
import { isPreparativeError } from "preparative";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { REQUESTS } from "./tools/requests";

const root = fileURLToPath(new URL("..", import.meta.url));
const config = ts.readConfigFile(`${root}/tsconfig.json`, ts.sys.readFile).config;
const { options } = ts.parseJsonConfigFileContent(config, ts.sys, root);
const program = ts.createProgram([`${root}/src/index.ts`], options);
const checker = program.getTypeChecker();
const index = checker.getSymbolAtLocation(program.getSourceFile(`${root}/src/index.ts`)!)!;

/** Types that are no options: values of the library and of the run-time, told by the name of the type. */
const VALUES =
  /^(?:Quantity|Formula|Fraction|Decimal|Equation|BalancedEquation|Plan|Run|RunRecord|Measured|Rational|Map|Date|Substance|AqueousComposition|TitrationCurve|EndPoint|OverPH|OverExcess|Chain|Facts|Route|HalfReactions|Learned|Stock|Lot)\b/;

/** The fields of an object type that a caller writes in braces; undefined for everything else. */
function fieldsOf(type: ts.Type): readonly string[] | undefined {
  if (checker.isArrayType(type) || checker.isTupleType(type) || type.getCallSignatures().length > 0) return undefined;
  if ((type.flags & ts.TypeFlags.Object) === 0 && !type.isIntersection()) return undefined;
  if (VALUES.test(checker.typeToString(type)) || type.getStringIndexType() !== undefined) return undefined;
  return type.getProperties().map((property) => property.name);
}

/** Where an object of options stands inside another: a field, or the first of the list in a field. */
type Path = readonly { readonly field: string; readonly isList: boolean }[];

/** A path and the fields of the object that stands there, of all the types it may have. */
interface Inner {
  readonly path: Path;
  readonly fields: readonly string[];
}

/** The objects of options inside an object type, at every depth. */
function innerOf(types: readonly ts.Type[], path: Path = []): Inner[] {
  const found = new Map<string, { readonly isList: boolean; readonly types: ts.Type[] }>();
  for (const property of types.flatMap((type) => (fieldsOf(type) === undefined ? [] : type.getProperties()))) {
    const type = checker.getNonNullableType(checker.getTypeOfSymbol(property));
    for (const one of type.isUnion() ? type.types : [type]) {
      const isList = checker.isArrayType(one);
      const element = isList ? checker.getTypeArguments(one as ts.TypeReference)[0]! : one;
      for (const object of element.isUnion() ? element.types : [element]) {
        if (fieldsOf(object) === undefined) continue;
        const known = found.get(property.name) ?? { isList, types: [] };
        known.types.push(object);
        found.set(property.name, known);
      }
    }
  }
  return [...found].flatMap(([field, { isList, types: inner }]) => {
    const here = [...path, { field, isList }];
    const fields = [...new Set(inner.flatMap((type) => fieldsOf(type)!))];
    return [{ path: here, fields }, ...(here.length > 4 ? [] : innerOf(inner, here))];
  });
}

interface Case {
  readonly name: string;
  /** Place of the options among the arguments, and the names of those before. */
  readonly at: number;
  readonly before: readonly string[];
  readonly fields: readonly string[];
  readonly inner: readonly Inner[];
}

const cases: Case[] = [];
for (const exported of checker.getExportsOfModule(index)) {
  if (/^(?:try[A-Z]|is[A-Z])/.test(exported.name)) continue;
  const symbol = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
  const { valueDeclaration } = symbol;
  if (valueDeclaration === undefined) continue;
  // For the layers above, not for callers.
  if (symbol.getJsDocTags().some((tag) => tag.name === "internal")) continue;
  const signature = checker.getTypeOfSymbolAtLocation(symbol, valueDeclaration).getCallSignatures().at(-1);
  signature?.parameters.forEach((parameter, at) => {
    const type = checker.getTypeOfSymbolAtLocation(parameter, valueDeclaration);
    const types = type.isUnion() ? type.types : [type];
    const alternatives = types.map(fieldsOf).filter((fields) => fields !== undefined);
    if (alternatives.length === 0) return;
    const before = signature.parameters.slice(0, at).map(({ name }) => name);
    cases.push({ name: exported.name, at, before, fields: [...new Set(alternatives.flat())], inner: innerOf(types) });
  });
}

/**
 * No options: a type that only says how a value is written, a table whose fields the caller names, and the record of a
 * value, which is read back by the version it states.
 */
const isOptions = ({ name, fields }: Case): boolean =>
  fields.length > 0 && fields.join() !== "toString" && !name.endsWith("FromJSON");

const plan = preparative.planPreparation({
  equation: "ZnSO4 + Na2CO3 -> ZnCO3 + Na2SO4",
  product: "ZnCO3",
  materials: [
    { name: "moss killer", form: "ZnSO4·7H2O" },
    { name: "washing soda", form: "Na2CO3" },
  ],
  scale: { product: "10 g" },
});

/** An argument that stands before the options, by the name of its parameter, if need be with that of the function; every function reads it without them. */
const BEFORE: Readonly<Record<string, unknown>> = {
  mass: "1 g",
  amount: "1 mol",
  amounts: ["1 mol"],
  volume: "25 mL",
  density: "1.2 g/mL",
  formula: "NaCl",
  acid: "CH3COOH",
  solid: "AgCl",
  form: "",
  product: "H2O",
  feed: "1 g",
  feeds: { H2: "1 g" },
  nameOrFormulas: ["NaCl"],
  candidate: preparative.shopMaterial("Epsom salt").candidates[0],
  receipt: { name: "soda", form: "Na2CO3", amount: "1 kg" },
  issued: { name: "salt", amount: "1 g" },
  count: { name: "salt", found: "1 g" },
  plans: [],
  solute: "NaCl",
  species: "NaCl",
  gas: "CO2",
  massFraction: "5 % w/w",
  actual: "1 g",
  theoretical: "2 g",
  strength: "5 % w/w",
  parts: [
    { strength: "5 % w/w", portion: "1 g" },
    { strength: "6 % w/w", portion: "1 g" },
  ],
  list: ["1 g", "2 g"],
  symbol: "Cu",
  input: "H2 + O2 -> H2O",
  equation: "H2 + O2 -> H2O",
  steps: ["H2 + O2 -> H2O"],
  known: { H2: "1 g" },
  needed: "O2",
  found: { C: "40 %", H: "6.7 %", O: "53.3 %" },
  text: "NaCl",
  name: "water",
  nameOrFormula: "water",
  style: "prefixes",
  temperature: "20 °C",
  what: "Na",
  of: "NaCl",
  as: "NaCl",
  operands: ["1 g"],
  spec: { name: "f", unit: "g", value: () => 1, partials: () => [1] },
  like: "1(1) g",
  dimension: "mass",
  argument: "mass",
  materials: ["water"],
  formulas: ["KNO3"],
  plan,
  run: preparative.evaluateRun(plan, { dried: "10 g" }),
  stock: preparative.openStock(),
  curve: preparative.titrationCurve({
    flask: { volume: "25 mL", dissolved: [{ formula: "CH3COOH", concentration: "0.1 mol/L" }] },
    burette: { formula: "NaOH", concentration: "0.1 mol/L" },
  }),
  over: preparative.solidsOverPH({
    ions: [{ formula: "ZnSO4", concentration: "0.01 mol/L" }],
    from: 6,
    to: 9,
    step: 1,
  }),
  "overExcessDiagram.over": preparative.dissolvedOverExcess({
    ion: "Al^3+",
    water: "1 kg",
    dissolved: [{ formula: "AlCl3", amount: "0.01 mol" }],
    add: "NaOH",
    amount: "0.03 mol",
    steps: 10,
  }),
  "benchSheet.of": plan,
  "bottleLabel.of": plan,
};

/** A field with a slip of the pen: a letter left out, or the last one twice where the word is short. */
function misspelt(field: string, fields: readonly string[]): string {
  const slips = [
    ...(field.length > 3 ? [...field].map((_, i) => field.slice(0, i) + field.slice(i + 1)) : []),
    field + field.at(-1),
    `${field}_`,
  ];
  return slips.findLast((slip) => !fields.includes(slip))!;
}

const BEAKER = { water: "100 g", dissolved: [{ formula: "NaCl", amount: "0.01 mol" }] };
const TITRANT = { formula: "NaOH", concentration: "0.1 mol/L" };

/** Calls that are good but for the slip, where what is inside is read after what stands before it. */
const BEAKERS: readonly (readonly [name: string, args: readonly unknown[]])[] = [
  ["convertStrength", ["1 eq/L", { of: "H2SO4", to: "mol/L" }]],
  ["aqueousComposition", [BEAKER]],
  ["pHOf", [BEAKER]],
  ["solidsOverPH", [{ ions: [{ formula: "ZnSO4", concentration: "0.01 mol/L" }], from: 6, to: 14 }]],
  ["solidsAlongAddition", [{ ...BEAKER, add: TITRANT, amount: "0.02 mol" }]],
  [
    "dissolvedOverExcess",
    [
      {
        ion: "Zn^2+",
        water: "100 g",
        dissolved: [{ formula: "ZnSO4", amount: "0.01 mol" }],
        add: TITRANT,
        amount: "0.02 mol",
      },
    ],
  ],
  ["bufferRecipe", [{ pH: "4.7", volume: "1 L", concentration: "0.1 mol/L", pair: ["CH3COOH", "CH3COONa"] }]],
  ["doseToPH", [{ solution: BEAKER, with: TITRANT, to: "7" }]],
  [
    "redissolving",
    [
      {
        solid: "AgCl",
        amountOfSolid: "0.01 mol",
        with: { formula: "NH3", concentration: "2 mol/L" },
        water: "1 kg",
        dissolved: [],
      },
    ],
  ],
  ["titrationCurve", [{ flask: BEAKER, burette: TITRANT }]],
  ["planPreparation", [{ ...plan.request }]],
  ["findRoutes", [{ target: "CaCO3", shelf: [] }]],
  ["withLearned", [{ ...plan.request }, preparative.learnFromRuns([])]],
  [
    "planSequence",
    [
      {
        steps: [{ equation: plan.request.equation, product: "ZnCO3", materials: plan.request.materials }],
        wanted: "1 g",
      },
    ],
  ],
];

/** The reaction of equivalents is read where a strength is in equivalents, by one reader for all functions. */
const isUnread = ({ name }: Case, path: Path): boolean =>
  path.at(-1)?.field === "reaction" && name !== "convertStrength";

const stepText = ({ field, isList }: Path[number]): string => `${field}${isList ? "[]" : ""}`;

/** A request with a field that nobody knows in the object at a path. */
function inside(request: unknown, [step, ...rest]: Path, unknown: string): object {
  const own = typeof request === "object" && request !== null ? request : {};
  if (step === undefined) return { ...own, [unknown]: undefined };
  const inner: unknown = (own as Readonly<Record<string, unknown>>)[step.field];
  if (!step.isList) return { ...own, [step.field]: inside(inner, rest, unknown) };
  const [first, ...others] = Array.isArray(inner) ? (inner as readonly unknown[]) : [];
  return { ...own, [step.field]: [inside(first, rest, unknown), ...others] };
}

const functions = preparative as unknown as Readonly<Record<string, (...args: unknown[]) => unknown>>;

function refusal(run: () => unknown): preparative.PreparativeError | undefined {
  try {
    run();
    return undefined;
  } catch (error) {
    if (isPreparativeError(error)) return error;
    throw error;
  }
}

describe("options", () => {
  const all = cases.filter(isOptions);

  it("are found in the types", () => {
    expect(all.length).toBeGreaterThan(80);
    expect(all.map(({ name }) => name)).toEqual(expect.arrayContaining(["gasVolume", "halfReactions", "washPlan"]));
  });

  it.each(all.map((one) => [`${one.name}, argument ${one.at + 1}`, one] as const))(
    "%s: refuses each with a slip of the pen, and knows which was meant",
    (_, { name, fields, before }) => {
      const args = before.map((parameter) => {
        const given = BEFORE[`${name}.${parameter}`] ?? BEFORE[parameter];
        expect(given, `${parameter}, which stands before the options: this test has no value for it`).not.toBe(
          undefined,
        );
        return given;
      });
      const wrong = fields.filter((field) => {
        const error = refusal(() => functions[name]!(...args, { [misspelt(field, fields)]: undefined }));
        return error?.details["nearest"] !== field || error.hint?.includes(`did you mean ${field}?`) !== true;
      });
      expect(wrong).toEqual([]);
    },
  );

  it.each(
    all.flatMap((one) =>
      one.inner
        .filter(({ path, fields }) => fields.join() !== "toString" && !isUnread(one, path))
        .map((inner) => [`${one.name}, ${inner.path.map(stepText).join(".")}`, one, inner] as const),
    ),
  )("%s: refuses each with a slip of the pen as well", (_, { name, at, before }, { path, fields }) => {
    const good = [...REQUESTS, ...BEAKERS].flatMap(([door, args]) => (door === name ? [args] : []));
    const bare = before.map((parameter) => BEFORE[`${name}.${parameter}`] ?? BEFORE[parameter]);
    const silent = fields.filter((field) => {
      const errors = [bare, ...good].map((args) =>
        refusal(() => functions[name]!(...args.slice(0, at), inside(args[at], path, misspelt(field, fields)))),
      );
      return !errors.some((error) => error?.hint?.includes(`did you mean ${field}?`));
    });
    expect(silent).toEqual([]);
  });
});
