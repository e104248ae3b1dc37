// Figures of runs that take too long for every test: written down by hand from what the command printed, with the day. The page
// of trust prints them as they stand here; a run that was not made has no row.
interface Measured {
  readonly what: string;
  readonly figure: string;
  readonly command: string;
  /** Day of the run. */
  readonly date: string;
}

export const MEASURED: readonly Measured[] = [
  {
    what: "rows of the safety tables taken out or shifted one by one, all of them, and the facts of safety asked again",
    figure:
      "1272 of 1282 changes noticed (99.2 %); seven of the others were drying limits that nothing read, deleted after it",
    command: "npx tsx test/tools/safety-mutations.ts",
    date: "2026-11-28",
  },
  {
    what: "dangerous pairs of materials in five spellings each, either one first",
    figure: "193 pairs, 965 spellings, none passed over",
    command: "npx vitest run test/published/dangerous-mixes.test.ts",
    date: "2026-11-28",
  },
  {
    what: "texts made by grammars and damaged, given to the readers of quantities, formulas, equations, names, labels and recipes",
    figure: "10,000,000 texts, 3,541,288 read; none broke a reader, none read back as something else",
    command: "npm run fuzz -- 10 20261129",
    date: "2026-11-29",
  },
  {
    what: "reactions drawn at random from shelves and targets not seen before, graded line by line before the verdict of the code was read, by the one who mended the rules between the draws",
    figure: "right when drawn: 93 of 150, 132 of 150, 127 of 130, 125 of 130, 105 of 110, 109 of 110",
    command: "npx vitest run test/route/graded.slow.test.ts",
    date: "2026-11-28",
  },
  {
    what: "runs written by people who had not seen the code, with one planted fault each, and good runs",
    figure:
      "126 runs; named first at first sight 74 of 91 faults, no alarm in 35 good runs; all 91 after the rules were mended on them",
    command: "npx vitest run test/preparation/blind-runs.slow.test.ts",
    date: "2026-11-28",
  },
  {
    what: "preparations written as a teacher would, with textbook formulas and shop names, each sheet read line by line",
    figure: "35 of 60 could be followed as first printed, 57 of the 59 that still get a sheet after rules were mended",
    command: "npx vitest run test/preparation/natural-preparations.test.ts",
    date: "2026-11-28",
  },
  {
    what: "preparations listed before any was run by somebody who had not seen the code, and each sheet judged line by line as a bench chemist would",
    figure:
      "without an objection as first printed: 13 of 26, 7 of 21, 5 of 14, 5 of 14, 2 of 14, 3 of 12, 4 of 10, 5 of 12, 4 of 10, 6 of 11, 4 of 11, 2 of 8, none of 11 and 2 of 10 sheets (3, 3, 1, 1, 2, none, none, 1, 1, none, 2, none, 2 and 1 could not be followed); 33 of 39 refusals right; of 14 faulty ones of the second set 10 without an objection after rules were mended",
    command:
      "npx vitest run test/preparation/after-the-trial.test.ts test/preparation/fifth-trial.test.ts test/preparation/sixth-trial.test.ts test/preparation/seventh-trial.test.ts test/preparation/eighth-trial.test.ts test/preparation/ninth-trial.test.ts test/preparation/tenth-trial.test.ts test/preparation/eleventh-trial.test.ts test/preparation/twelfth-trial.test.ts test/preparation/thirteenth-trial.test.ts test/preparation/fourteenth-trial.test.ts test/preparation/fifteenth-trial.test.ts test/preparation/sixteenth-trial test/preparation/seventeenth-trial",
    date: "2026-11-30",
  },
  {
    what: "small faults put into lines of a layer and met by its own tests alone, samples with fresh seeds",
    figure:
      "aqueous 44 of 49 (seed 6201), sheet 44 of 45 (seed 7301), solubility 36 of 41 (60 lines, seed 41002), preparation 69 of 78 (60 lines, seed 42007) and 63 of 72 (40 lines, seed 42008) after the last tests, 209 of 283 before them (seeds 42004 to 42006)",
    command: "npm run mutants -- 40 <seed> <layer>; aqueous and sheet on 2026-11-28",
    date: "2026-11-29",
  },
  {
    what: "small faults put into lines of the layers below the beaker and met by their own tests alone, samples with fresh seeds after the last tests, unless said otherwise",
    figure:
      "quantity 37 of 38, hydrate 24 of 25, foundation 49 of 54, ion 73 of 83, equation 43 of 49, formula 103 of 113",
    command:
      "npm run mutants -- 40 9101 <layer>; quantity with seed 9102, ion 60 lines with seed 13001, formula 60 lines with seed 41003, equation with seed 8102; all but formula on 2026-11-28",
    date: "2026-11-29",
  },
];
