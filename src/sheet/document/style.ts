// How a sheet looks in HTML: black on white, readable with wet gloves, two pages of A4 or Letter, a column on a phone.

/** Sizes of paper. */
export type Page = "A4" | "Letter";

/** The style of every sheet; all of it hangs on the one class, so that a page may hold a sheet among other things. */
export const STYLE = `.bench-sheet{font:10pt/1.27 "Liberation Sans",Arial,Helvetica,sans-serif;color:#000;background:#fff;max-width:190mm;margin:0 auto}
.bench-sheet *{box-sizing:border-box}
.bench-sheet h1{font-size:17pt;line-height:1.15;margin:0 0 1mm}
.bench-sheet h2{font-size:11pt;margin:3mm 0 1mm;border-bottom:1.2pt solid #000;break-after:avoid}
.bench-sheet p{margin:1mm 0}
.bench-sheet ul,.bench-sheet ol{margin:.6mm 0;padding-left:5mm;font-size:9.5pt}
.bench-sheet table{border-collapse:collapse;width:100%;margin:1mm 0}
.bench-sheet th,.bench-sheet td{border:.5pt solid #666;padding:.8mm 1.5mm;vertical-align:top;text-align:left}
.bench-sheet th{background:#eee;font-size:9pt}
.bench-sheet .figure{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}
.bench-sheet .head{display:flex;justify-content:space-between;gap:6mm;align-items:flex-start}
.bench-sheet .fill{display:inline-block;min-width:24mm;height:5mm;border-bottom:.7pt solid #000;vertical-align:bottom}
.bench-sheet .fills{font-size:9.5pt;min-width:58mm}
.bench-sheet .fills div{margin-bottom:1mm;white-space:nowrap}
.bench-sheet .strip{display:grid;grid-template-columns:repeat(5,1fr);border:1.2pt solid #000;margin:2mm 0}
.bench-sheet .strip div{padding:1mm 1.8mm;border-right:.5pt solid #666;font-size:9pt}
.bench-sheet .strip div:last-child{border-right:0}
.bench-sheet .strip strong{display:block;font-size:12pt;line-height:1.2}
.bench-sheet .tick{display:inline-block;margin:0 4mm 1mm 0;white-space:nowrap}
.bench-sheet .box{display:inline-block;width:5mm;height:5mm;border:1.1pt solid #000;border-radius:.6mm;vertical-align:-1mm;margin-right:1mm}
.bench-sheet .steps td{padding:1.1mm 1.6mm}
.bench-sheet .steps .number{width:8mm;text-align:center;font-weight:700}
.bench-sheet .steps .done{width:9mm;text-align:center}
.bench-sheet .steps .action{font-size:10.5pt}
.bench-sheet .steps .note{width:40mm;font-size:9.5pt}
.bench-sheet .caution{font-weight:700;border-left:2.4pt solid #000;padding-left:1.6mm;margin-top:1mm}
.bench-sheet .pictures{display:flex;flex-wrap:wrap;gap:5mm}
.bench-sheet .pictures figure{margin:1mm 0;flex:1 1 70mm;max-width:110mm}
.bench-sheet .pictures figcaption{font-size:9pt}
.bench-sheet svg{max-width:100%;height:auto}
.bench-sheet .pictogram{max-width:none;width:9.5mm;height:9.5mm;margin-right:.5mm}
.bench-sheet .signs{white-space:nowrap}
.bench-sheet .columns{display:flex;gap:6mm;align-items:flex-start;break-inside:avoid}
.bench-sheet .columns>div{flex:1 1 0;min-width:0}
.bench-sheet tr,.bench-sheet figure,.bench-sheet .strip,.bench-sheet .head{break-inside:avoid}
.bench-sheet .page{break-before:page;height:0}
@media screen{.bench-sheet{padding:4mm}}
@media screen and (max-width:640px){.bench-sheet .head,.bench-sheet .columns{display:block}.bench-sheet .strip{grid-template-columns:1fr 1fr}.bench-sheet .table{overflow-x:auto}.bench-sheet .steps,.bench-sheet .steps tbody,.bench-sheet .steps tr,.bench-sheet .steps td{display:block;width:auto;border:0;text-align:left}.bench-sheet .steps thead{display:none}.bench-sheet .steps tr{border:.8pt solid #666;margin-bottom:2mm;padding:1mm}.bench-sheet .box{width:8mm;height:8mm}}`;

/** The paper of a whole document, with the page numbers at its foot. */
export const paperOf = (page: Page): string =>
  `@page{size:${page};margin:12mm 12mm 14mm;@bottom-right{content:counter(page) " / " counter(pages);font:8.5pt Arial,sans-serif}}body{margin:0}`;
