// How a sheet looks in HTML: black on white, readable with wet gloves, two pages of A4 or Letter, a column on a phone.

/** Sizes of paper. */
export type Page = "A4" | "Letter";

/** The style of every sheet; all of it hangs on the one class, so that a page may hold a sheet among other things. */
export const STYLE = `.bench-sheet{font:10pt/1.25 "Liberation Sans",Arial,Helvetica,sans-serif;color:#000;background:#fff;max-width:190mm;margin:0 auto}
.bench-sheet *{box-sizing:border-box}
.bench-sheet sub,.bench-sheet sup{font-size:.78em;line-height:0}
.bench-sheet h1{font-size:15pt;line-height:1.12;margin:0 0 .6mm}
.bench-sheet h2{font-size:11pt;margin:1.9mm 0 .7mm;border-bottom:1.2pt solid #000;break-after:avoid}
.bench-sheet p{margin:.7mm 0}
.bench-sheet ul,.bench-sheet ol{margin:.5mm 0;padding-left:4.5mm;font-size:9pt;line-height:1.2}
.bench-sheet table{border-collapse:collapse;width:100%;margin:.8mm 0}
.bench-sheet th,.bench-sheet td{border:.5pt solid #666;padding:.4mm 1.4mm;vertical-align:top;text-align:left;font-size:9.5pt}
.bench-sheet th{background:#eee;font-size:8.5pt}
.bench-sheet tr,.bench-sheet li,.bench-sheet figure,.bench-sheet .strip,.bench-sheet .head{break-inside:avoid}
.bench-sheet .figure{text-align:right;font-variant-numeric:tabular-nums;white-space:nowrap}
.bench-sheet .blank{text-align:right;vertical-align:bottom;height:5.6mm;min-width:16mm}
.bench-sheet .head{display:flex;justify-content:space-between;gap:5mm;align-items:flex-start}
.bench-sheet .head>:first-child{flex:1 1 0;min-width:0}
.bench-sheet .fill{display:inline-block;min-width:21mm;height:4.6mm;border-bottom:.7pt solid #000;vertical-align:bottom}
.bench-sheet .fills{font-size:9.5pt;flex:0 0 68mm;display:grid;grid-template-columns:1fr 1fr;gap:1mm 3mm}
.bench-sheet .fills div{display:flex;align-items:flex-end;gap:1mm;white-space:nowrap;height:6mm}
.bench-sheet .fills .fill{flex:1 1 0;min-width:0}
.bench-sheet .line{display:flex;align-items:flex-end;gap:1mm;height:6.4mm}
.bench-sheet .line .fill{flex:1 1 0}
.bench-sheet .small{font-size:9pt}
.bench-sheet .columns{display:flex;gap:5mm;align-items:flex-start;break-inside:avoid}
.bench-sheet .columns>div{flex:1 1 0;min-width:0}
.bench-sheet .strip{display:grid;grid-template-columns:repeat(5,1fr);border:1.2pt solid #000;margin:1.6mm 0}
.bench-sheet .strip div{padding:.7mm 1.5mm;border-right:.5pt solid #666;font-size:8.8pt;line-height:1.2}
.bench-sheet .strip.long{grid-template-columns:repeat(4,1fr)}
.bench-sheet .strip.long div{border-bottom:.5pt solid #666}
.bench-sheet .strip:not(.long) div:last-child{border-right:0}
.bench-sheet .strip strong{display:block;font-size:11.5pt;line-height:1.2}
.bench-sheet .tick{display:inline-block;margin:.1mm 3mm .2mm 0;white-space:nowrap;font-size:9.5pt}
.bench-sheet .choice{white-space:nowrap;margin-right:1.5mm}
.bench-sheet .box{display:inline-block;width:4.4mm;height:4.4mm;border:1.1pt solid #000;border-radius:.6mm;vertical-align:-.9mm;margin-right:1mm}
.bench-sheet .steps td{padding:.5mm 1.4mm}
.bench-sheet .steps .number{width:8mm;text-align:center;font-weight:700;font-size:10.5pt}
.bench-sheet .steps .done{width:9mm;text-align:center}
.bench-sheet .steps .done .box{margin:0}
.bench-sheet .steps .action{font-size:10.2pt}
.bench-sheet .steps strong{white-space:nowrap}
.bench-sheet .steps .note{width:36mm;font-size:9pt}
.bench-sheet .steps .note .box{width:4mm;height:4mm}
.bench-sheet .caution{font-weight:700;font-size:9.2pt;line-height:1.2;border-left:2.4pt solid #000;padding-left:1.4mm;margin-top:.7mm}
.bench-sheet .pictures{display:flex;flex-wrap:wrap;gap:2mm 5mm}
.bench-sheet .pictures figure{margin:.6mm 0;flex:1 1 70mm;max-width:105mm}
.bench-sheet .pictures figcaption{font-size:9pt;font-weight:700}
.bench-sheet svg{max-width:100%;height:auto;display:block}
.bench-sheet .pictogram{display:inline-block;max-width:none;width:7.8mm;height:7.8mm;margin-right:.4mm}
.bench-sheet .signs{white-space:nowrap}
.bench-sheet .columns td:first-child{white-space:nowrap}
.bench-sheet .page{break-before:page;height:0}
@media screen{.bench-sheet{padding:4mm}}
@media screen and (max-width:640px){.bench-sheet .head,.bench-sheet .columns{display:block}.bench-sheet .columns td:first-child{white-space:normal}.bench-sheet .strip,.bench-sheet .strip.long{grid-template-columns:1fr 1fr}.bench-sheet .tick{white-space:normal}.bench-sheet .steps,.bench-sheet .steps tbody{display:block}.bench-sheet .steps .note,.bench-sheet .steps td{width:auto;border:0;text-align:left}.bench-sheet .steps thead{display:none}.bench-sheet .steps tr{display:grid;grid-template-columns:8mm 11mm 1fr;border:.8pt solid #666;margin-bottom:2mm;padding:1mm}.bench-sheet .steps .note{grid-column:3}.bench-sheet .cards,.bench-sheet .cards tbody,.bench-sheet .cards tr{display:block}.bench-sheet .cards thead{display:none}.bench-sheet .cards tr{border:.8pt solid #666;margin-bottom:2mm;padding:1mm}.bench-sheet .cards td{display:block;position:relative;height:auto;min-height:6mm;padding-left:34%;border:0;text-align:left;white-space:normal}.bench-sheet .cards td::before{content:attr(data-label);position:absolute;left:1.4mm;width:31%;font-size:8.5pt}.bench-sheet .cards td:empty{display:none}.bench-sheet .cards .blank{border-bottom:.7pt solid #000}.bench-sheet .box{width:8mm;height:8mm}}`;

/** Words as a text of CSS: whatever they hold, they end nothing. */
const cssText = (text: string): string =>
  `"${text.replace(/[^\p{L}\p{N} .,:_-]/gu, (sign) => `\\${sign.codePointAt(0)!.toString(16)} `)}"`;

/** "page {page} of {pages}" as CSS counts it. */
const counted = (phrase: string): string =>
  phrase
    .split(/(\{pages?\})/)
    .map((part) => (part === "{page}" ? "counter(page)" : part === "{pages}" ? "counter(pages)" : cssText(part)))
    .join(" ");

/** Letter is the shorter paper: what fits A4 is to fit it. */
const MARGINS: Readonly<Record<Page, string>> = { A4: "9mm 12mm 12mm", Letter: "6mm 12mm 9mm" };

/** The paper of a whole document, with what it is and the page number at its foot. */
export const paperOf = (page: Page, foot: string, pages: string): string =>
  `@page{size:${page};margin:${MARGINS[page]};@bottom-left{content:${cssText(foot)};font:8.5pt Arial,sans-serif}@bottom-right{content:${counted(pages)};font:8.5pt Arial,sans-serif}}body{margin:0}`;
