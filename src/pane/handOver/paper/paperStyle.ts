import type { PaperSize } from "./PaperSize";

/** The look of printed papers: black on white, tables that go on over pages with their headings, nothing torn apart that can be kept whole. */
export function paperStyle(size: PaperSize): string {
  return `
@page { size: ${size === "A4" ? "A4" : "letter"}; margin: 14mm 14mm 16mm; }
* { box-sizing: border-box; }
:root { color-scheme: light; }
body { margin: 0; padding: 12px; background: #fff; color: #111; font: 14px/1.45 system-ui, "Segoe UI", Helvetica, Arial, sans-serif; }
main > section + section { border-top: 2px dashed #767676; margin-top: 24px; padding-top: 16px; }
h1 { font-size: 20px; line-height: 1.25; margin: 0 0 8px; overflow-wrap: anywhere; }
h2 { font-size: 15px; margin: 16px 0 4px; break-after: avoid; overflow-wrap: anywhere; }
p { margin: 6px 0; white-space: pre-wrap; overflow-wrap: anywhere; }
dl { display: grid; grid-template-columns: max-content 1fr; gap: 2px 12px; margin: 8px 0; }
dt { color: #555; }
dd { margin: 0; overflow-wrap: anywhere; white-space: pre-wrap; }
.wide { overflow-x: auto; margin: 10px 0; }
table { border-collapse: collapse; width: 100%; font-size: 12px; }
caption { text-align: left; font-weight: 600; padding: 4px 0; }
th, td { border-bottom: 1px solid #999; padding: 4px 6px 4px 0; text-align: left; vertical-align: top; overflow-wrap: break-word; white-space: pre-line; }
td.short { white-space: nowrap; }
th.number, td.number { padding-right: 14px; }
th { border-bottom: 2px solid #111; }
td.number, th.number { text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; }
thead { display: table-header-group; }
tr, img, .line, .caution { break-inside: avoid; }
.line { margin-top: 28px; border-top: 1px solid #111; padding-top: 2px; max-width: 320px; font-size: 12px; }
.caution { border-left: 3px solid #111; padding-left: 8px; font-size: 12px; }
img { display: block; max-width: 100%; max-height: 320px; margin: 8px 0; }
.figures { display: grid; grid-template-columns: repeat(auto-fill, minmax(120px, 1fr)); gap: 8px; margin: 10px 0; }
figure { margin: 0; break-inside: avoid; font-size: 11px; overflow-wrap: anywhere; }
figure img { max-height: 150px; margin: 0 0 2px; }
@media print {
  .figures { grid-template-columns: repeat(4, 1fr); }
  figure { font-size: 8pt; }
  body { padding: 0; font-size: 10.5pt; }
  .wide { overflow: visible; }
  table { font-size: 9pt; }
  main > section + section { border-top: 0; margin-top: 0; padding-top: 0; break-before: page; }
  main.cards > section { break-inside: avoid; font-size: 12pt; }
  main.cards > section + section { border-top: 1px solid #111; margin-top: 8mm; padding-top: 6mm; break-before: auto; }
}
`;
}
