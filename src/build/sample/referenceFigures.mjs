import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, readdirSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Workbook } from "@cj-tech-master/excelts";
import { answerFormulas, fillDays, fillOthers, fillPieces } from "./referenceAnswers.mjs";
import { readScenario } from "./writeWorkbook.mjs";

/**
 * The figures the sample workbook must give, worked out by LibreOffice Calc from its own built-in functions
 * (WORKDAY, NETWORKDAYS, EDATE, SUMIFS, COUNTIFS, MINIFS, MAXIFS, SUMPRODUCT) and never by this project's code. Needs soffice; run by
 * hand when the scenario changes: node src/build/sample/referenceFigures.mjs
 */
const scenario = readScenario();
const column = (heading) => scenario.headings.indexOf(heading);
const serial = (iso) => Date.parse(`${iso}T00:00:00Z`) / 86400000 + 25569;
const iso = (day) => new Date((day - 25569) * 86400000).toISOString().slice(0, 10);

/** Each way of saying terms in the scenario, in Calc's own functions: {out}, shoot day and closed days are names. */
const TERMS = {
  "3 working days after shoot": "WORKDAY(Shoot,3,Closed)",
  "10 days": "WORKDAY({out}+10+1,-1,Closed)",
  "2 working days after wrap": "WORKDAY(Shoot,2,Closed)",
  "2 weeks": "WORKDAY({out}+14+1,-1,Closed)",
  "by 2026-04-07": "DATE(2026,4,7)",
  "5 wd after shoot": "WORKDAY(Shoot,5,Closed)",
  "14 days": "WORKDAY({out}+14+1,-1,Closed)",
  "8 working days": "WORKDAY({out},8,Closed)",
  "next working day after shoot": "WORKDAY(Shoot,1,Closed)",
  "1 month": "WORKDAY(EDATE({out},1)+1,-1,Closed)",
  "28 days from receipt": "{out}+28",
  "by 10 Apr 2026": "DATE(2026,4,10)",
  "4 working days after last shoot day": "WORKDAY(Shoot,4,Closed)",
};

/** What a careful person reads in the messy cells; null is 'cannot be read'. */
const READ = { "'26 Mar 2026": "2026-03-26", "'03/04/26": null, "'tbc": null, "'£2,400.00": "2400" };
const read = (typed) => (typed in READ ? READ[typed] : typed.startsWith("=") ? null : typed);

const book = new Workbook();
const sheet = book.addWorksheet("P");
sheet.getCell("Z1").value = serial(scenario.lastShootDay);
sheet.getCell("Z2").value = serial(scenario.asOf);
scenario.closedDays.forEach(([day], i) => (sheet.getCell(`Y${i + 1}`).value = serial(day)));
const names = { Shoot: "$P.$Z$1", AsOf: "$P.$Z$2", Closed: `$P.$Y$1:$Y$${scenario.closedDays.length}` };
const named = (formula) => formula.replace(/\b(Shoot|AsOf|Closed)\b/g, (name) => names[name].replaceAll("$P.", ""));

const pieces = scenario.pieces.filter((row) => row.join("") !== "");
pieces.forEach((row, i) => {
  const at = i + 1;
  const cell = (letter) => sheet.getCell(`${letter}${at}`);
  const out = read(row[column("Date out")]);
  const terms = row[column("Terms")];
  const typedDue = row[column("Return due")];
  const backTyped = row[column("Date back")];
  const back = read(backTyped);
  const quantity = Number(row[column("Qty")] || 1) || 1;
  const value = row[column("Ins. value")] === "" ? "" : read(row[column("Ins. value")]);
  cell("A").value = Number(row[column("Item no.")]);
  // Spellings that differ only in capitals and spaces are one lender; anything else is another.
  cell("B").value = row[column("Lender")].trim().toLowerCase();
  cell("C").value = serial(out);
  if (typedDue !== "=DUE") cell("D").value = serial(typedDue);
  else if (TERMS[terms]) cell("D").value = { formula: named(TERMS[terms].replaceAll("{out}", `C${at}`)) };
  cell("D").numFmt = "0";
  cell("E").value = back === null ? "?" : back === "" ? null : serial(back);
  cell("F").value = quantity;
  cell("G").value = Number(row[column("Qty back")]) || 0;
  // The day it must be back: what was agreed later replaces what was due.
  const extended = row[column("Extended to")];
  cell("L").value = extended === "" ? { formula: `IF(D${at}="","",D${at})` } : serial(extended);
  cell("L").numFmt = "0";
  cell("M").value = row[column("Settled")] === "" ? 0 : 1;
  cell("H").value = value === null ? "?" : value === "" ? null : Number(value);
  // Still out: out by the day, and not back by it, or back in part.
  cell("I").value = {
    formula: named(
      `IF(OR(C${at}>AsOf,E${at}="?",M${at}=1),0,IF(OR(E${at}="",E${at}>AsOf),F${at},IF(G${at}=0,0,MAX(0,F${at}-G${at}))))`,
    ),
  };
  cell("J").value = { formula: named(`IF(AND(I${at}>0,L${at}<>"",L${at}<AsOf),AsOf-L${at},0)`) };
  cell("K").value = { formula: `IF(OR(H${at}="",H${at}="?"),0,I${at}*H${at})` };
});
// Named as first seen: the last entry of a key wins in a Map, so the rows go in backwards.
const spelt = new Map(
  [...pieces].reverse().map((row) => [row[column("Lender")].trim().toLowerCase(), row[column("Lender")].trim()]),
);
const lenders = [...spelt].reverse();
const rows = pieces.length;
const totals = book.addWorksheet("T");
lenders.forEach(([key], i) => {
  const at = i + 1;
  const range = (letter) => `P!$${letter}$1:$${letter}$${rows}`;
  totals.getCell(`A${at}`).value = key;
  const put = (letter, formula) => (totals.getCell(`${letter}${at}`).value = { formula });
  put("B", `SUMIFS(${range("I")},${range("B")},A${at})`);
  put("C", `SUMIFS(${range("K")},${range("B")},A${at})`);
  put(
    "D",
    `IF(COUNTIFS(${range("B")},A${at},${range("I")},">0",${range("L")},">="&P!$Z$2)=0,"",_xlfn.MINIFS(${range("L")},${range("B")},A${at},${range("I")},">0",${range("L")},">="&P!$Z$2))`,
  );
  totals.getCell(`D${at}`).numFmt = "0";
  put("E", `SUMIFS(${range("I")},${range("B")},A${at},${range("J")},">0")`);
  put("F", `SUMIFS(${range("K")},${range("B")},A${at},${range("J")},">0")`);
  put("G", `_xlfn.MAXIFS(${range("J")},${range("B")},A${at})`);
  put("H", `SUMIFS(${range("I")},${range("B")},A${at},${range("D")},"")`);
  put("I", `SUMIFS(${range("I")},${range("B")},A${at},${range("H")},"")`);
});

const closed = `P!${names.Closed.replaceAll("$P.", "")}`;
fillPieces(sheet, scenario, pieces);
fillOthers(book, scenario, { serial, closed });
fillDays(book, scenario, rows);
const daysShown = serial(scenario.asOf) - serial(scenario.lastShootDay) + 12;
const answers = book.addWorksheet("A");
answerFormulas({ ...scenario, daysShown }, { pieces, closed }).forEach(([address, formula], i) => {
  answers.getCell(`A${i + 1}`).value = address;
  answers.getCell(`B${i + 1}`).value = { formula };
  answers.getCell(`B${i + 1}`).numFmt = "0.0000000000";
});

const folder = mkdtempSync(join(tmpdir(), "figures-"));
writeFileSync(join(folder, "figures.xlsx"), Buffer.from(await book.xlsx.writeBuffer()));
const run = spawnSync("soffice", [
  "--headless",
  "--convert-to",
  "csv:Text - txt - csv (StarCalc):9,34,76,1,,0,false,false,false,false,false,-1",
  "--outdir",
  folder,
  join(folder, "figures.xlsx"),
]);
if (run.status !== 0) throw new Error(`LibreOffice did not convert the workbook: ${run.stderr}`);
const table = (name) =>
  readFileSync(
    join(
      folder,
      readdirSync(folder).find((file) => file.endsWith(`-${name}.csv`)),
    ),
    "utf8",
  )
    .split("\n")
    .filter((line) => line !== "")
    .map((line) => line.split("\t").map((text) => text.replace(/^"|"$/g, "")));
const number = (text) => (text === "" || text === undefined ? null : Number(text));

const computed = table("P");
const due = {};
computed
  .slice(0, rows)
  .forEach(
    (cells, i) => (due[pieces[i][0]] = [...(due[pieces[i][0]] ?? []), cells[3] === "" ? null : iso(Number(cells[3]))]),
  );
const late = computed
  .slice(0, rows)
  .map((cells, i) => ({ item: pieces[i][0], daysLate: Number(cells[9]), value: Number(cells[10]), row: i }))
  .filter((row) => row.daysLate > 0)
  .sort((a, b) => b.daysLate - a.daysLate || b.value - a.value || a.row - b.row)
  .map(({ item, daysLate }) => [item, daysLate]);
const unreadable = (key, heading) =>
  pieces.some(
    (row) =>
      row[column("Lender")].trim().toLowerCase() === key &&
      row[column(heading)] !== "" &&
      read(row[column(heading)]) === null,
  );
const lenderTotals = table("T").map((cells, i) => ({
  lender: lenders[i][1],
  piecesOut: number(cells[1]),
  valueOut: number(cells[2]),
  nextDue: cells[3] === "" ? null : iso(Number(cells[3])),
  latePieces: number(cells[4]),
  lateValue: number(cells[5]),
  mostDaysLate: number(cells[6]),
  noDueDate: number(cells[7]),
  unvalued: number(cells[8]),
  valueUnreadable: unreadable(lenders[i][0], "Ins. value"),
  backUnreadable: unreadable(lenders[i][0], "Date back"),
}));
/** What is listed goes by its day, then by its place in the sheet. */
const listed = (entries) => entries.sort((a, b) => a.by - b.by || a.row - b.row).map(({ name }) => name);
const line = (letter) => [...letter].reduce((sum, each) => sum * 26 + each.charCodeAt(0) - 64, 0) - 1;
const lists = {
  "Returns!A6": listed(
    computed
      .slice(0, rows)
      .map((cells, row) => ({ name: pieces[row][0], by: Number(cells[11]), row, is: cells[line("AG")] === "1" }))
      .filter(({ is }) => is),
  ),
  "Returns!J6": listed(
    computed
      .slice(0, rows)
      .map((cells, row) => ({
        name: pieces[row][0],
        by: 0,
        row,
        is: Number(cells[line("AH")]) + Number(cells[line("AI")]) > 0,
      }))
      .filter(({ is }) => is),
  ),
  "To chase!A6": listed(
    table("Q")
      .map((cells, row) => ({ name: scenario.requests[row][0], by: Number(cells[1]), row, is: cells[4] === "1" }))
      .filter(({ is }) => is),
  ),
  "Money!A6": listed(
    table("C")
      .map((cells, row) => ({ name: scenario.receipts[row][0], by: Number(cells[10]), row, is: Number(cells[9]) > 0 }))
      .filter(({ is }) => is),
  ),
  "Value!D11": listed(
    pieces
      .map((cells, row) => ({
        name: cells[0],
        by: 0,
        row,
        is: Number(cells[column("Ins. value")]) > scenario.pieceLimit,
      }))
      .filter(({ is }) => is),
  ),
};
const cells = Object.fromEntries(table("A").map(([address, value]) => [address, Number(value)]));
const version = spawnSync("soffice", ["--version"]).stdout.toString().trim().split(" ").slice(0, 2).join(" ");
const figures = {
  source: `Computed with ${version} from its built-in WORKDAY, EDATE, SUMIFS, COUNTIFS, MINIFS, MAXIFS, SUMPRODUCT and NETWORKDAYS by src/build/sample/referenceFigures.mjs; nothing of this project's arithmetic took part.`,
  asOf: scenario.asOf,
  due,
  late,
  lenderTotals,
  lists,
  cells,
};
writeFileSync(
  new URL("../../../sample-workbooks/two-day-shoot.figures.json", import.meta.url),
  `${JSON.stringify(figures, null, 2)}\n`,
);
