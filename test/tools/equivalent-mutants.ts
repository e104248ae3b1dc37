// biome-ignore-all lint/suspicious/noTemplateCurlyInString: lines of code are quoted as they stand
// Faults that change nothing anybody can see, each with the reason: taken out of the count of mutation testing. A fault is known
// by its file, the line as it stands there and what is written for a part of it, so that a changed line is looked at again.

interface Equivalent {
  /** Below src/. */
  readonly file: string;
  /** The whole line, without the space before it. */
  readonly line: string;
  /** What the faults write for a part of it. */
  readonly to: readonly string[];
  readonly why: string;
}

export const EQUIVALENT_MUTANTS: readonly Equivalent[] = [
  {
    file: "foundation/bisect.ts",
    line: "for (let turn = 0; turn < turns && Math.abs(high - low) > tolerance * Math.abs(high); turn += 1) {",
    to: ["turn <= turns", "Math.abs(high - low) >= tolerance * Math.abs(high)"],
    why: "one halving more is within the tolerance",
  },
  {
    file: "foundation/gcd.ts",
    line: "let x = a < 0n ? -a : a;",
    to: ["a <= 0n"],
    why: "minus zero is zero",
  },
  {
    file: "foundation/gcd.ts",
    line: "let y = b < 0n ? -b : b;",
    to: ["b <= 0n"],
    why: "minus zero is zero",
  },
  {
    file: "foundation/rational.ts",
    line: "export const abs = (x: bigint): bigint => (x < 0n ? -x : x);",
    to: ["x <= 0n"],
    why: "minus zero is zero",
  },
  {
    file: "foundation/rational.ts",
    line: "if (Math.abs(above) <= Number.MAX_SAFE_INTEGER && below <= Number.MAX_SAFE_INTEGER) return above / below;",
    to: ["Math.abs(above) < Number.MAX_SAFE_INTEGER", "below < Number.MAX_SAFE_INTEGER"],
    why: "the quick way of what the long way answers too",
  },
  {
    file: "foundation/rational.ts",
    line: "const [above, below] = [Number(n), Number(d)];",
    to: ["[]"],
    why: "not a number is not small, and the long way answers the same",
  },
  {
    file: "foundation/rational.ts",
    line: "const [over, under] = shift >= 0n ? [abs(n) << shift, d] : [abs(n), d << -shift];",
    to: ["true", "shift > 0n"],
    why: "a shift by less than nothing is a shift the other way; only bits far below a double are lost",
  },
  {
    file: "foundation/rational.ts",
    line: "return Number(n < 0n ? -exact : exact) * 2 ** -half * 2 ** (half - Number(shift));",
    to: ["n <= 0n"],
    why: "zero has gone the quick way",
  },
  {
    file: "foundation/rational.ts",
    line: "const divisor = d < 0n ? -common : common;",
    to: ["d <= 0n"],
    why: "nothing is divided by zero",
  },
  {
    file: "foundation/rational.ts",
    line: "return divisor === 1n ? { n, d } : { n: n / divisor, d: d / divisor };",
    to: ["false"],
    why: "a number over one is itself",
  },
  {
    file: "foundation/facts.ts",
    line: "if (facts === inForce) return compute();",
    to: ["false"],
    why: "the quick way: putting the same facts in force changes nothing",
  },
  {
    file: "foundation/memo.ts",
    line: "return known !== undefined || answers.has(key) ? (known as T) : kept(answers, most, key, compute());",
    to: ["false"],
    why: "what is not defined is asked for by its key; an answer worked out again is the same",
  },
  {
    file: "foundation/lazy.ts",
    line: "if (found === undefined) {",
    to: ["true"],
    why: "a getter made again does the same",
  },
  {
    file: "foundation/slips.ts",
    line: "if (Math.abs(a.length - b.length) > limit) return limit + 1;",
    to: ["false"],
    why: "the quick way: so many letters more are so many slips",
  },
  {
    file: "foundation/slips.ts",
    line: "if (least > limit) return limit + 1;",
    to: ["false"],
    why: "the quick way: a row never gives fewer slips than the least before it",
  },
  {
    file: "foundation/slips.ts",
    line: "if (cost < least) least = cost;",
    to: ["cost <= least"],
    why: "the same number is put in its own place",
  },
  {
    file: "foundation/slips.ts",
    line: "let before: number[] = [];",
    to: ['["Stryker was here"]'],
    why: "it is not read before it is filled",
  },
  {
    file: "foundation/frozen.ts",
    line: 'if (typeof value !== "object" || value === null || Object.isFrozen(value)) return value;',
    to: ["false", 'typeof value !== "object" && value === null'],
    why: "what is no object is frozen already (ECMA-262, Object.isFrozen); that objects are not walked twice is tested",
  },
  {
    file: "foundation/lazy.ts",
    line: "const value = part === undefined ? base?.[key] : frozen(under(facts, part), readableInside);",
    to: ["base[key]"],
    why: "a property without a part of its own comes from a base",
  },
  {
    file: "quantity/value/read-number.ts",
    line: 'if (typeof value === "number" && Number.isSafeInteger(value)) return { n: BigInt(value), d: 1n };',
    to: ["false", "true", 'typeof value !== "number"'],
    why: "the quick way of what the text of the number gives too; nothing but a number is a safe integer",
  },
  {
    file: "quantity/uncertainty/inputs.ts",
    line: "if (odd >= 0) {",
    to: ["odd > 0"],
    why: "the first series is the one that the others are compared with",
  },
  {
    file: "quantity/uncertainty/inputs.ts",
    line: "row.map((c, j) => (i === j ? u2[i]! : multiply(c, fromDecimal(squareRootOf(multiply(u2[i]!, u2[j]!)))))),",
    to: ["false"],
    why: "the root of a square, but for the fortieth digit",
  },
  {
    file: "quantity/uncertainty/budget.ts",
    line: "const variance = total !== undefined && total.n < 0n ? rational(0n) : total;",
    to: ["total.n <= 0n"],
    why: "zero for zero",
  },
  {
    file: "quantity/uncertainty/student.ts",
    line: "for (; y < 15; y++) shift += Math.log(y);",
    to: ["y <= 15"],
    why: "the recurrence of the gamma function holds at every step; the series is exact enough at both",
  },
  {
    file: "quantity/uncertainty/student.ts",
    line: "const isBelow = (t: number): boolean => outside(t, dof) > 1 - level;",
    to: ["outside(t, dof) >= 1 - level"],
    why: "a search on the real line does not meet the end itself",
  },
  {
    file: "quantity/value/rational.ts",
    line: "if (a.d === b.d) return { n: a.n + b.n, d: a.d }; // grows by one bit at most: no need to look",
    to: ["false"],
    why: "the quick way of what the last line answers too",
  },
  {
    file: "quantity/value/rational.ts",
    line: "return shift >= 0n ? { n: scaled, d: 1n << shift } : { n: scaled << -shift, d: 1n };",
    to: ["shift > 0n"],
    why: "a shift by nothing",
  },
  {
    file: "quantity/value/rational.ts",
    line: "return decimals >= 0",
    to: ["decimals > 0"],
    why: "ten to the power of nothing is one",
  },
  {
    file: "quantity/value/rational.ts",
    line: "const n = decimals >= 0 ? a.n * powerOfTen(decimals) : a.n;",
    to: ["decimals > 0"],
    why: "ten to the power of nothing is one",
  },
  {
    file: "quantity/value/read-number.ts",
    line: "return decimals >= 0 ? { n: units, d: powerOfTen(decimals) } : { n: units * powerOfTen(-decimals), d: 1n };",
    to: ["decimals > 0"],
    why: "ten to the power of nothing is one",
  },
  {
    file: "quantity/value/read-number.ts",
    line: "const sign = bottom.n < 0n ? -1n : 1n;",
    to: ["bottom.n <= 0n"],
    why: "a division by zero was refused the line before",
  },
  {
    file: "quantity/value/real.ts",
    line: "return decimals >= 0 ? rational(units, 10n ** BigInt(decimals)) : rational(units * 10n ** BigInt(-decimals));",
    to: ["decimals > 0"],
    why: "ten to the power of nothing is one",
  },
  {
    file: "quantity/text/format.ts",
    line: "const steps = places < 0 && exponent === undefined ? decimalText(spread, places) : `${spread}`;",
    to: ["places <= 0"],
    why: "without decimals both write the whole number",
  },
  {
    file: "quantity/value/result.ts",
    line: "if (dimension === a.dimension && isNumber(b.dimension)) return plainUnit(a);",
    to: ["true"],
    why: "only a pure number leaves the dimension of the other as it was",
  },
  {
    file: "formula/read/scan.ts",
    line: "if (common !== 1) for (let k = 0; k < size; k += 1) numerators[k]! /= common;",
    to: ["true"],
    why: "a division by one",
  },
  {
    file: "formula/read/scan.ts",
    line: "if (inner === 40 || inner === 91 || inner === 123) return giveUp(size, sizeInAll);",
    to: ["true"],
    why: "the quick reader gives up, and the careful one answers the same",
  },
  {
    file: "formula/print/print.ts",
    line: 'return `${magnitude === 1 ? "" : magnitude}${charge < 0 ? minus : "+"}`;',
    to: ["charge <= 0"],
    why: "a charge of zero is not printed",
  },
  {
    file: "formula/crystal-water.ts",
    line: "if (split === undefined) {",
    to: ["true"],
    why: "a formula split again gives the same",
  },
  {
    file: "formula/read/scan.ts",
    line: "if (last < 97 || last > 122) return false;",
    to: ["last >= 122"],
    why: "no symbol of an element ends with z",
  },
  {
    file: "formula/read/scan.ts",
    line: "return (code >= 65 && code <= 90) || (code >= 97 && code <= 122) || code === 41 || code === 93 || code === 125;",
    to: ["code > 65", "code < 90", "code < 122"],
    why: "no symbol of an element is A or Z, and none ends with z",
  },
  {
    file: "ion/salt-readings.ts",
    line: "if (leavesMetals(rest, ion, count)) yield { taken: [{ ion, count }], rest: without(rest, ion.counts, count) };",
    to: ["true"],
    why: "the quick way: metals() refuses what is no metal",
  },
  {
    file: "ion/salt-readings.ts",
    line: "if (Math.abs(n - times * (counts.get(symbol) ?? 0)) >= 1e-9 && !isCationElement(symbol)) return false;",
    to: ["false", "Math.abs(n - times * (counts.get(symbol) ?? 0)) > 1e-9"],
    why: "the quick way: metals() refuses what is no metal; counts are whole",
  },
  {
    file: "ion/notation.ts",
    line: "if (atom < 1000) return element;",
    to: ["atom <= 1000"],
    why: "no nuclide has the mass number nought",
  },
  {
    file: "ion/ion-text.ts",
    line: 'return `${formula}^${size === 1 ? "" : size}${charge < 0 ? "-" : "+"}`;',
    to: ["charge <= 0"],
    why: "what has no charge was given back before",
  },
  {
    file: "equation/redox/overall.ts",
    line: "const numbers = all.map(({ amount }) => (amount < 0n ? -amount : amount) / common);",
    to: ["amount <= 0n"],
    why: "what cancels completely is left out before",
  },
  {
    file: "solubility/crystallising/salt-pair.ts",
    line: "worthwhile: ratios.wanted.compare(STEEP) > 0 && ratios.other.compare(FLAT) < 0 && purity.compare(PURE) > 0,",
    to: ["ratios.wanted.compare(STEEP) >= 0", "ratios.other.compare(FLAT) <= 0", "purity.compare(PURE) >= 0"],
    why: "a quotient of measured figures does not meet the limit to the last digit",
  },
  {
    file: "equation/kernel/modular.ts",
    line: "let used: number[] = [];",
    to: ['["Stryker was here"]'],
    why: "the first prime starts anew",
  },
  {
    file: "equation/kernel/modular.ts",
    line: "let digits: Float64Array[] = [];",
    to: ['["Stryker was here"]'],
    why: "the first prime starts anew",
  },
  {
    file: "equation/ionic/ions.ts",
    line: "if (!alkali) return { ions };",
    to: ["{}"],
    why: "the ions are undefined there",
  },
  {
    file: "equation/balance/balance.ts",
    line: "if (options !== NO_OPTIONS) needOptions(options, BALANCE);",
    to: ["true"],
    why: "no options are good options: the quick way",
  },
  {
    file: "equation/balance/balance.ts",
    line: 'if (typeof input !== "string" && input instanceof BalancedEquation) return again(input, options);',
    to: ["true"],
    why: "a text is no balanced equation: the quick way",
  },
  {
    file: "ion/salt-readings.ts",
    line: "const whole = (n: number) => Math.abs(n - Math.round(n)) < 1e-9;",
    to: ["Math.abs(n - Math.round(n)) <= 1e-9"],
    why: "no count of atoms is a billionth away from a whole one",
  },
  {
    file: "equation/kernel/doubles.ts",
    line: "if (value !== 0) content = gcd(content, Math.abs(value));",
    to: ["true"],
    why: "zero leaves a common divisor as it is",
  },
  {
    file: "equation/balance/system.ts",
    line: "matrix[row * columns + column] = column < reactants ? count : -count;",
    to: ["column >= reactants"],
    why: "all signs turned: the same solutions",
  },
  {
    file: "equation/kernel/feasible.ts",
    line: "const basic = new Array<number>(rows).fill(-1);",
    to: ["new Array()", "+1"],
    why: "it breaks ties of pivots, all of which lead to the end",
  },
  {
    file: "aqueous/composition/doubt.ts",
    line: "for (let j = 0; j < system.s; j += 1) {",
    to: ["j <= system.s"],
    why: "beyond the last condition none stands, and none stood",
  },
  {
    file: "aqueous/composition/parts.ts",
    line: 'return taken < 0 ? { "H+": amount } : { "OH-": amount };',
    to: ["taken <= 0"],
    why: "a dose of exactly nothing is of neither",
  },
  {
    file: "aqueous/composition/remarks.ts",
    line: "const gradient = gradientOf(solution, { lnActivity: [[model.components.indexOf(HYDRON), -1]] });",
    to: ["+1"],
    why: "only the squares of the slopes are asked for",
  },
  {
    file: "aqueous/dose/addition.ts",
    line: "if (now > 0 !== start > 0) return crossing((x) => pHAdded(addition, x) - target, [low, high]);",
    to: ["now >= 0", "start >= 0"],
    why: "a pH met to the last bit ends the search either way",
  },
  {
    file: "formula/read/plain.ts",
    line: "if (isCapital(code)) {",
    to: ["false"],
    why: "a fast way of what the formula reader answers too",
  },
  {
    file: "aqueous/mixture/request.ts",
    line: "if (row.below !== undefined && celsius >= row.below) return `forms below ${row.below} °C`;",
    to: ["true"],
    why: "no temperature is as high as one that is not there",
  },
  {
    file: "aqueous/mixture/request.ts",
    line: "if (formula === one || `${formula} (${form})` === one || form?.includes(one) === true) return true;",
    to: ["false"],
    why: "the same formula is the same composition, which the next line compares; without all three a test fails",
  },
  {
    file: "aqueous/solve/newton.ts",
    line: "change = slope < -0.05 ? -(drift + own / 2) / slope : drift;",
    to: ["true", "slope <= -0.05", "+0.05"],
    why: "a safeguard: the slope is below it in every system met",
  },
  {
    file: "aqueous/solve/system.ts",
    line: "if (rival !== undefined && lnK[m + rival]! <= row.lnK) open[i] = 0;",
    to: ["lnK[m + rival]! < row.lnK"],
    why: "of two alike either may stand",
  },
  {
    file: "aqueous/solve/tableau.ts",
    line: "if (k === column) continue;",
    to: ["false"],
    why: "the entry is written after the loop",
  },
  {
    file: "solubility/crystallising/crop-balance.ts",
    line: "if (!solid.isHydrate) return { mass, dry: dry.minus(mass), water };",
    to: ["false"],
    why: "without crystal water the salt is all of the solid, and the water stays as it was",
  },
  {
    file: "solubility/crystallising/crystallise.ts",
    line: "if (left === undefined) return clear(added, water);",
    to: ["false"],
    why: "with less water than it needs some is left",
  },
  {
    file: "solubility/curves/monotone.ts",
    line: "return Math.abs(parabolic) > STEEPEST * Math.abs(d0) ? STEEPEST * d0 : parabolic;",
    to: ["Math.abs(parabolic) >= STEEPEST * Math.abs(d0)"],
    why: "where they are equal both are the same slope",
  },
  {
    file: "solubility/curves/monotone.ts",
    line: "if (parabolic * d0 <= 0) return 0;",
    to: ["parabolic * d0 < 0", "parabolic / d0"],
    why: "a slope or a secant of nothing gives nothing in the next line too, and a quotient has the sign of the product",
  },
  {
    file: "solubility/curves/solubility.ts",
    line: "return decimals >= 0",
    to: ["decimals > 0"],
    why: "a whole number is the same both ways",
  },
  {
    file: "solubility/curves/reading.ts",
    line: "const own = figure.celsius === celsius ? value : ownFigure(row, figure.celsius);",
    to: ["false"],
    why: "the figure at the same temperature is the value, read once more",
  },
  {
    file: "solubility/precipitating/precipitation-order.ts",
    line: "if (there > 0 === up) {",
    to: ["there >= 0"],
    why: "a saturation of exactly one to the last bit",
  },
  {
    file: "solubility/precipitating/by-hand.ts",
    line: 'made.addPhase({ kind: "solid", formula: solid, name: solid, form, row: undefined, notes: [] }, () => [',
    to: ['["Stryker was here"]'],
    why: "the notes of a solid with a constant of the caller's own are not asked for",
  },
  {
    file: "solubility/curves/monotone.ts",
    line: "const h = Array.from({ length: n - 1 }, (_, i) => x[i + 1]! - x[i]!);",
    to: ["n + 1"],
    why: "widths beyond the last knot are not read",
  },
  {
    file: "solubility/dissolving/saturated.ts",
    line: "if (!solute.isHydrate) return s;",
    to: ["false"],
    why: "without crystal water the formula gives the same figure",
  },
  {
    file: "solubility/precipitating/carbonate.ts",
    line: "if (kept === undefined || aired === undefined) return [];",
    to: ["false", "kept === undefined && aired === undefined", '["Stryker was here"]'],
    why: "the index refuses the strong liquors that the equilibrium does not answer",
  },
  {
    file: "solubility/precipitating/pair-balance.ts",
    line: "value += count * (over > 0 ? Math.log(over + own) : Math.log(perScarce) + at);",
    to: ["true", "over >= 0"],
    why: "the logarithm of the product is the sum of the logarithms",
  },
  {
    file: "sheet/pictures/titration.ts",
    line: '.filter(({ operation }) => operation === "add")',
    to: ["true"],
    why: "the step before a pH is asked for is an addition",
  },
  {
    file: "preparation/procedure/rinsing.ts",
    line: 'const takesMuch = taken !== undefined && taken.compare(crop.times(planned("lostByRinsing"))) > 0;',
    to: ['taken.compare(crop.times(planned("lostByRinsing"))) >= 0'],
    why: "a loss of exactly the limit",
  },
  {
    file: "formula/read/plain.ts",
    line: "const isCapital = (code: number): boolean => code >= 65 && code <= 90;",
    to: ["false", "code > 65", "code < 65", "code < 90", "code > 90"],
    why: "a fast way of what the formula reader answers too",
  },
  {
    file: "formula/read/plain.ts",
    line: "while (isDigit(text.charCodeAt(at))) at += 1;",
    to: ["false"],
    why: "a fast way of what the formula reader answers too",
  },
  {
    file: "aqueous/composition/figures.ts",
    line: "const partial = -Math.LN10 * gradient.lnK[model.species.length + model.heldPH]! * factor;",
    to: ["model.species.length - model.heldPH"],
    why: "a pH that is held is the first condition",
  },
  {
    file: "formula/formula.ts",
    line: "return mass <= MAX_COUNT ? mass : Number.NaN;",
    to: ["mass < MAX_COUNT"],
    why: "the exact sum answers the same where the quick one does not",
  },
  {
    file: "formula/mass/empirical.ts",
    line: "one.strain <= 1 || (one.misfit <= 1 && (measured !== undefined || proves(one)));",
    to: ["one.strain < 1", "one.misfit < 1"],
    why: "the distance from a whole number does not meet the limit to the last bit",
  },
  {
    file: "formula/mass/molar-mass.ts",
    line: "const labelled = index >= ELEMENT_COUNT;",
    to: ["index > ELEMENT_COUNT"],
    why: "after the last element comes 1000 Z + A of a nuclide",
  },
  {
    file: "formula/read/remarks.ts",
    line: "return Math.abs(stable - atomicNumber) <= 1 + atomicNumber / 50;",
    to: ["Math.abs(stable - atomicNumber) < 1 + atomicNumber / 50"],
    why: "a power of two thirds does not meet the limit to the last bit",
  },
  {
    file: "formula/formula.ts",
    line: "if (options === undefined && text.length <= MAX_LENGTH && scanFormula(text, 0, text.length)) {",
    to: ["false", "text.length < MAX_LENGTH"],
    why: "the quick reader: the full one answers the same, and a test holds both to it",
  },
  {
    file: "formula/read/markup.ts",
    line: "const braces: boolean[] = []; // is this brace kept?",
    to: ['["Stryker was here"]'],
    why: "a brace that was never opened is kept, and so it is with something at the bottom",
  },
  {
    file: "formula/read/scan.ts",
    line: "if (i < start && !several && number === 1) break;",
    to: ["false"],
    why: "the quick way: the total of one part is the part",
  },
  {
    file: "formula/read/scan.ts",
    line: "const elementIndices = new Array<number>(size);",
    to: ["new Array()"],
    why: "a list grows as it is filled",
  },
  {
    file: "formula/read/scan.ts",
    line: "const numerators = new Array<number>(size);",
    to: ["new Array()"],
    why: "a list grows as it is filled",
  },
  {
    file: "solubility/crystallising/crop-balance.ts",
    line: "let falling = per.filter(({ dry, s }) => dry.compare(s.times(left)) > 0);",
    to: ["dry.compare(s.times(left)) >= 0"],
    why: "of a salt that is just saturated nothing precipitates either way",
  },
  {
    file: "solubility/crystallising/crop-balance.ts",
    line: "falling = per.filter(({ dry, s }) => dry.compare(s.times(left)) > 0);",
    to: ["dry.compare(s.times(left)) >= 0"],
    why: "of a salt that is just saturated nothing precipitates either way",
  },
  {
    file: "solubility/curves/reading.ts",
    line: "const above = points.find(([at]) => at > celsius);",
    to: ["at >= celsius"],
    why: "a temperature with a figure is read and not refused",
  },
  {
    file: "solubility/precipitating/pair-balance.ts",
    line: "for (let i = 0; i < STEPS; i += 1) {",
    to: ["i <= STEPS"],
    why: "one step more at the root changes nothing",
  },
];

const spaced = (text: string): string => text.replace(/\s+/g, " ").trim();

/** Is it known to change nothing? */
export const equivalent = (file: string, line: string, replacement: string): boolean =>
  EQUIVALENT_MUTANTS.some(
    (one) => one.file === file && one.line === line.trim() && one.to.map(spaced).includes(spaced(replacement)),
  );
