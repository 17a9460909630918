import { Workbook } from "@cj-tech-master/excelts";
import { functionDocs } from "../functionDocs.mjs";
import { columnLetter, heading, put, title, widths } from "./cells.mjs";
import { exampleCells } from "./exampleCells.mjs";

const EPSILON = "0.000001";
/** Sheet names may not be longer than 31 characters. */
const SHORT_NAMES = { "Carrying, preparing, running about": "Carrying and running" };

/** A formula as the file stores an add-in's call. */
function stored(formula) {
  return formula.slice(1).replace(/\bTACK\.([A-Z]+)\(/g, "_xldudf_TACK_$1(");
}

/**
 * Says whether the result that spills over one block is what the block beside it holds. A day or a time of day is
 * documented as text, and taken apart by its figures, since format letters differ from language to language.
 */
function comparison(result, documented) {
  const figures = (from, length) => `MID(${documented},${from},${length})`;
  const ways = [
    `${result}=${documented}`,
    `ABS(${result}-${documented})<${EPSILON}`,
    `${result}=DATE(${figures(1, 4)},${figures(6, 2)},${figures(9, 2)})`,
    `ABS(${result}-${figures(1, 2)}/24-${figures(4, 2)}/1440)<${EPSILON}`,
  ];
  const same = ways.map((way) => `IFERROR(--(${way}),0)`).join("+");
  return `IF(SUM(IF(${same}>0,0,1))=0,"as documented","differs")`;
}

/** Every documented example of every function, live, beside what it is documented to give: open it in Excel and read column A. */
export function examplesWorkbook() {
  const workbook = new Workbook();
  workbook.creator = "Tackstitch";
  workbook.created = new Date(Date.UTC(2026, 0, 1));
  workbook.modified = workbook.created;
  const spills = [];
  const docs = functionDocs();
  const families = [...new Set(docs.map((doc) => doc.family))];
  const summary = workbook.addWorksheet("Summary");
  title(
    summary,
    "Every documented example, live",
    "all of them should be as documented; where one differs, its sheet says which",
  );
  widths(summary, [36, 16, 12, 12]);
  ["Family", "As documented", "Differ", "Examples"].forEach((text, i) => {
    summary.getCell(4, i + 1).value = text;
    heading(summary.getCell(4, i + 1));
  });
  families.forEach((family, i) => {
    const row = 5 + i;
    const checks = `'${SHORT_NAMES[family] ?? family}'!$A$4:$A$2000`;
    const examples = docs.filter((doc) => doc.family === family).flatMap((doc) => doc.examples);
    summary.getCell(row, 1).value = family;
    summary.getCell(row, 2).value = { formula: `COUNTIF(${checks},"as documented")` };
    summary.getCell(row, 3).value = { formula: `COUNTIF(${checks},"differs")` };
    summary.getCell(row, 4).value = examples.length;
  });
  for (const family of families) {
    const sheet = workbook.addWorksheet(SHORT_NAMES[family] ?? family, { views: [{ state: "frozen", ySplit: 2 }] });
    title(sheet, family, "each example live, and beside it what it is documented to give");
    widths(sheet, [18, ...Array(30).fill(14)]);
    const spill = (address, formula) => {
      sheet.getCell(address).value = { formula };
      spills.push({ sheet: sheet.name, address });
    };
    let row = 4;
    for (const doc of docs.filter((each) => each.family === family)) {
      heading(sheet.getCell(row, 1));
      heading(sheet.getCell(row, 2));
      sheet.getCell(row, 1).value = `TACK.${doc.id}`;
      sheet.getCell(row, 2).value = doc.answers;
      row += 1;
      for (const { formula, gives, fails } of doc.examples) {
        sheet.getCell(row, 2).value = gives === null ? `${formula}   fails: ${fails}` : formula;
        row += 1;
        spill(`B${row}`, stored(formula));
        if (gives === null) {
          spill(`A${row}`, `IF(ISERROR(B${row}),"as documented","differs")`);
          row += 2;
          continue;
        }
        const cells = exampleCells(gives);
        const width = cells[0].length;
        const left = 2 + width + 1;
        const block = (column) =>
          `${columnLetter(column)}${row}:${columnLetter(column + width - 1)}${row + cells.length - 1}`;
        cells.forEach((line, r) => line.forEach((cell, c) => put(sheet.getCell(row + r, left + c), cell)));
        spill(`A${row}`, comparison(block(2), block(left)));
        row += cells.length + 1;
      }
      row += 1;
    }
  }
  return { workbook, spills };
}
