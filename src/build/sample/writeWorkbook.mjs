import { readFileSync } from "node:fs";
import { Workbook } from "@cj-tech-master/excelts";
import { columnLetter, DATE, heading, put, title, widths } from "./cells.mjs";

const here = new URL("./", import.meta.url);
const PAPER = "FFF3EFE6";

/** The return date of each piece, as the file stores an add-in's call. */
export const DUE_FORMULA =
  "_xldudf_TACK_DUE(Loans[[#This Row],[Date out]],Loans[[#This Row],[Terms]],LastShootDay,ClosedDays[Closed])";

export function readScenario() {
  const scenario = JSON.parse(readFileSync(new URL("two-day-shoot.json", here), "utf8"));
  const [headings, ...pieces] = readFileSync(new URL("two-day-shoot.pieces.tsv", here), "utf8")
    .split("\n")
    .filter((line) => line !== "")
    .map((line) => line.split("\t"));
  return { ...scenario, headings, pieces };
}

/** Writes rows under a heading row and makes them a table of the workbook. */
function addTable(sheet, name, top, left, headings, rows) {
  const bottom = top + rows.length;
  const right = left + headings.length - 1;
  sheet.addTable({
    name,
    ref: `${columnLetter(left)}${top}:${columnLetter(right)}${bottom}`,
    headerRow: true,
    style: { theme: "TableStyleLight1", showRowStripes: true },
    columns: headings.map((text) => ({ name: text, filterButton: true })),
    rows: rows.map((row) => headings.map((_, i) => (row[i] === "" || row[i] === undefined ? null : row[i]))),
  });
  headings.forEach((text, i) => {
    const cell = sheet.getCell(top, left + i);
    cell.value = text;
    heading(cell);
  });
  rows.forEach((row, r) => {
    headings.forEach((_, i) => {
      const cell = sheet.getCell(top + 1 + r, left + i);
      cell.value = null;
      put(cell, row[i] ?? "");
    });
  });
}

/** A formula whose result spills; where it stands is remembered for the dynamic-array marks in the file. */
function spill(sheet, spills, address, formula, headings = 0) {
  sheet.getCell(address).value = { formula };
  spills.push({ sheet: sheet.name, address });
  const top = sheet.getCell(address);
  for (let column = 0; column < headings; column++) heading(sheet.getCell(top.row, top.col + column));
}

/** The rows of a table that fit a condition, with their heading row: what a whole-table function takes. */
function rowsWhere(table, condition) {
  return `_xlfn.VSTACK(${table}[#Headers],_xlfn._xlws.FILTER(${table}[],${condition}))`;
}

function jobSheet(workbook, spills, scenario) {
  const sheet = workbook.addWorksheet("Job");
  title(sheet, `${scenario.title}: two-day shoot`, "Change the as-of day and every sheet follows.");
  widths(sheet, [36, 20, 4, 18, 30, 4, 22, 12]);
  const facts = [
    ["As-of day", scenario.asOf],
    ["Last shoot day", scenario.lastShootDay],
    ["Insurance limit, all pieces", scenario.coverLimit],
    ["Insurance limit, one piece", scenario.pieceLimit],
    ["Value out, the whole pull", "_xldudf_TACK_VALUEOUT(Loans[#All],AsOf)"],
    ["Lender to look at", scenario.lenderToLookAt],
    ["Value out with that lender", `_xldudf_TACK_VALUEOUT(${rowsWhere("Loans", "Loans[Lender]=B9")},AsOf)`],
    ["Day of a return run", scenario.returnRun],
    ["Carried on that run, kg", `_xldudf_TACK_CARRIED(${rowsWhere("Loans", "Loans[Date back]=B11")})`],
  ];
  facts.forEach(([label, typed], i) => {
    if (label === undefined) return;
    sheet.getCell(4 + i, 1).value = label;
    if (typeof typed === "string" && typed.startsWith("_xldudf")) spill(sheet, spills, `B${4 + i}`, typed);
    else put(sheet.getCell(4 + i, 2), typed);
  });
  for (const row of [6, 7, 8, 10]) sheet.getCell(row, 2).numFmt = '"£"#,##0';
  sheet.getCell(12, 2).numFmt = "0.0";
  for (const row of [4, 5, 6, 7, 9, 11])
    sheet.getCell(row, 2).fill = { type: "pattern", pattern: "solid", fgColor: { argb: PAPER } };
  sheet.getCell(14, 1).value =
    "A figure above shows #VALUE! while a piece it needs cannot be read; the Check view in the pane says which.";
  sheet.getCell(15, 1).value =
    "Weights are typical ones where the sheet has none. Carrying injures: share loads, follow local rules.";
  scenario.jobFacts.forEach(([label, says], i) => {
    sheet.getCell(17 + i, 1).value = label;
    sheet.getCell(17 + i, 2).value = says;
  });
  addTable(sheet, "ClosedDays", 4, 4, ["Closed", "Why"], scenario.closedDays);
  addTable(sheet, "People", 4, 7, ["What", "How many"], scenario.people);
}

function trySheet(workbook) {
  const sheet = workbook.addWorksheet("Try here");
  title(sheet, "An empty sheet to try things on", "nothing else in the workbook depends on it");
  widths(sheet, [26, 14, 14, 17, 13, 13, 15, 13, 12]);
  [
    "1. In A9 type =TACK.LENDERTOTALS( then pick the table on Loans (or type Loans[#All]), a comma, AsOf, a bracket, Enter.",
    "2. On Loans change a Date back: the totals here, on Totals and on Late follow.",
    "3. On Job change the as-of day.",
  ].forEach((text, i) => {
    sheet.getCell(4 + i, 1).value = text;
  });
}

function loansSheet(workbook, scenario) {
  const sheet = workbook.addWorksheet("Loans", { views: [{ state: "frozen", xSplit: 2, ySplit: 4 }] });
  title(
    sheet,
    "Pull for 30 + 31 March, and the pick-up",
    "one row a piece; due dates work themselves out from the terms",
  );
  widths(
    sheet,
    [9, 30, 11, 24, 10, 7, 12, 6, 11, 9, 17, 32, 17, 17, 9, 19, 18, 8, 10, 32].concat([
      17, 17, 9, 9, 13, 18, 14, 12, 17, 9, 11, 10, 16,
    ]),
  );
  const dueColumn = scenario.headings.indexOf("Return due");
  const rows = scenario.pieces.map((row) =>
    row.map((typed, i) => (i === dueColumn && typed === "=DUE" ? `=${DUE_FORMULA}` : typed)),
  );
  addTable(sheet, "Loans", 4, 1, scenario.headings, rows);
  rows.forEach((row, r) => {
    if (row[dueColumn] !== "") sheet.getCell(5 + r, dueColumn + 1).numFmt = DATE;
    for (const money of ["Ins. value", "Rental fee", "Deposit"])
      sheet.getCell(5 + r, scenario.headings.indexOf(money) + 1).numFmt = '"£"#,##0';
  });
  const bottom = 5 + rows.length;
  sheet.getCell(bottom, 2).value = "TOTAL";
  sheet.getCell(bottom, 2).font = { bold: true };
  put(sheet.getCell(bottom, 9), scenario.typedTotal);
}

/** A sheet of typed rows. Columns of money are shown to the penny. */
function plainSheet(workbook, name, note, headings, rows, table, columnWidths, money = []) {
  const sheet = workbook.addWorksheet(name, { views: [{ state: "frozen", ySplit: 4 }] });
  title(sheet, name, note);
  widths(sheet, columnWidths);
  addTable(sheet, table, 4, 1, headings, rows);
  for (const text of money)
    rows.forEach((_, r) => (sheet.getCell(5 + r, headings.indexOf(text) + 1).numFmt = '"£"#,##0.00'));
}

function totalsSheet(workbook, spills) {
  const sheet = workbook.addWorksheet("Totals");
  title(sheet, "Who still has what out", "worked out from Loans for the as-of day on Job");
  widths(sheet, [26, 14, 14, 17, 13, 13, 15, 13, 12]);
  spill(sheet, spills, "A4", "_xldudf_TACK_LENDERTOTALS(Loans[#All],AsOf)", 9);
}

function lateSheet(workbook, spills) {
  const sheet = workbook.addWorksheet("Late");
  title(sheet, "Late on the as-of day", "most late first, then most valuable");
  widths(sheet, [9, 30, 11, 24, 10, 7, 12, 6, 11, 9, 12, 32, 12, 12, 9, 19, 14, 8, 10, 22, 10]);
  spill(sheet, spills, "A4", "_xldudf_TACK_LATEROWS(Loans[#All],AsOf)", 21);
}

function daySheet(workbook, spills, day) {
  const sheet = workbook.addWorksheet(day.sheet);
  title(sheet, day.sheet, "timed from Looks and the people on Job; change a minute there and watch the wrap");
  widths(sheet, [24, 18, 13, 12, 12, 12, 26, 9]);
  [
    ["Date", day.date],
    ["Call", day.call],
    ["Wrap", day.wrap],
  ].forEach(([label, typed], i) => {
    sheet.getCell(4 + i, 1).value = label;
    put(sheet.getCell(4 + i, 2), typed);
  });
  const looks = rowsWhere("Looks", "Looks[Date]=B4");
  sheet.getCell(7, 1).value = "Minutes to spare at wrap";
  spill(sheet, spills, "B7", `_xldudf_TACK_DAYFIT(${looks},B5,B6,People[])`);
  spill(sheet, spills, "A9", `_xldudf_TACK_DAYPLAN(${looks},B5,People[])`, 8);
  return sheet;
}

/** The whole sample workbook, and where its spilling formulas stand. */
export function sampleWorkbook(scenario) {
  const workbook = new Workbook();
  workbook.creator = "Tackstitch";
  workbook.created = new Date(Date.UTC(2026, 0, 1));
  workbook.modified = workbook.created;
  const spills = [];
  jobSheet(workbook, spills, scenario);
  loansSheet(workbook, scenario);
  plainSheet(
    workbook,
    "Lenders",
    "who lends, on what terms, and when they are open",
    scenario.lenderHeadings,
    scenario.lenders,
    "Lenders",
    [26, 14, 34, 26, 9, 9, 16, 34, 11, 13],
  );
  plainSheet(
    workbook,
    "Looks",
    "in shooting order; minutes, not clock times",
    scenario.lookHeadings,
    scenario.looks,
    "Looks",
    [8, 8, 17, 11, 13, 11, 9, 18, 11, 15, 9, 9, 7, 7, 8, 9],
  );
  plainSheet(
    workbook,
    "Requests",
    "who was asked for what; the last rows are for the pick-up",
    scenario.requestHeadings,
    scenario.requests,
    "Requests",
    [24, 12, 34, 32, 17, 17, 9, 17, 28, 17, 17, 28],
  );
  plainSheet(
    workbook,
    "Receipts",
    "bought on the card, to be kept or taken back",
    scenario.receiptHeadings,
    scenario.receipts,
    "Receipts",
    [20, 17, 28, 11, 9, 14, 17, 16, 17, 26],
    ["Amount", "Kept", "Amount refunded"],
  );
  plainSheet(
    workbook,
    "Stops",
    "the return run of Wednesday 8 April; the first row is where it starts and ends",
    scenario.stopHeadings,
    scenario.stops,
    "Stops",
    [24, 28, 26, 14, 9, 14, 10, 10, 11, 17],
  );
  plainSheet(
    workbook,
    "Shoes",
    "soles to be taped: painter's tape inside, cloth gaffer tape over it outside",
    scenario.shoeHeadings,
    scenario.shoes,
    "Shoes",
    [30, 9, 12, 8, 8, 22],
  );
  totalsSheet(workbook, spills);
  lateSheet(workbook, spills);
  for (const day of scenario.days) daySheet(workbook, spills, day);
  trySheet(workbook);
  workbook.definedNames.add("Job!$B$4", "AsOf");
  workbook.definedNames.add("Job!$B$5", "LastShootDay");
  workbook.definedNames.add("Job!$B$6", "CoverLimit");
  workbook.definedNames.add("Job!$B$7", "PieceLimit");
  return { workbook, spills };
}
