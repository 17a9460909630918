import { readFileSync } from "node:fs";
import { Workbook } from "@cj-tech-master/excelts";
import { answerSheet, spill } from "./answers.mjs";
import { carrySheet } from "./carrySheet.mjs";
import { chaseSheet } from "./chaseSheet.mjs";
import { daySheet } from "./daySheet.mjs";
import { jobSheet } from "./jobSheet.mjs";
import { loansSheet, PIECE_WIDTHS } from "./loansSheet.mjs";
import { moneySheet } from "./moneySheet.mjs";
import { orderSheet } from "./orderSheet.mjs";
import { plainSheet } from "./plainSheet.mjs";
import { returnsSheet } from "./returnsSheet.mjs";
import { runSheet } from "./runSheet.mjs";
import { shoesSheet } from "./shoesSheet.mjs";
import { trySheet } from "./trySheet.mjs";
import { valueSheet } from "./valueSheet.mjs";

const here = new URL("./", import.meta.url);

export function readScenario() {
  const scenario = JSON.parse(readFileSync(new URL("two-day-shoot.json", here), "utf8"));
  const [headings, ...pieces] = readFileSync(new URL("two-day-shoot.pieces.tsv", here), "utf8")
    .split("\n")
    .filter((line) => line !== "")
    .map((line) => line.split("\t"));
  return { ...scenario, headings, pieces };
}

function totalsSheet(workbook, spills) {
  const sheet = answerSheet(workbook, {
    name: "Totals",
    about: "Who still has what out",
    note: "worked out from Loans for the as-of day on Job",
    columnWidths: [26, 14, 14, 17, 13, 13, 15, 13, 12],
  });
  spill(sheet, spills, "A4", "_xldudf_TACK_LENDERTOTALS(Loans[#All],AsOf)", 9);
}

function lateSheet(workbook, spills, scenario) {
  const sheet = answerSheet(workbook, {
    name: "Late",
    about: "Late on the as-of day",
    note: "most late first, then most valuable",
    columnWidths: [...PIECE_WIDTHS, 10],
  });
  spill(sheet, spills, "A4", "_xldudf_TACK_LATEROWS(Loans[#All],AsOf)", scenario.headings.length + 1);
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
  trySheet(workbook);
  plainSheet(workbook, {
    name: "Lenders",
    note: "who lends, on what terms, and when they are open",
    headings: scenario.lenderHeadings,
    rows: scenario.lenders,
    columnWidths: [26, 14, 34, 26, 9, 9, 16, 34, 11, 13],
  });
  plainSheet(workbook, {
    name: "Looks",
    note: "in shooting order; minutes, not clock times",
    headings: scenario.lookHeadings,
    rows: scenario.looks,
    columnWidths: [8, 8, 17, 11, 13, 11, 9, 18, 11, 15, 9, 9, 7, 7, 8, 9],
  });
  plainSheet(workbook, {
    name: "Requests",
    note: "who was asked for what; the last rows are for the pick-up",
    headings: scenario.requestHeadings,
    rows: scenario.requests,
    columnWidths: [24, 12, 34, 32, 17, 17, 9, 17, 28, 17, 17, 28],
  });
  plainSheet(workbook, {
    name: "Receipts",
    note: "bought on the card, to be kept or taken back",
    headings: scenario.receiptHeadings,
    rows: scenario.receipts,
    columnWidths: [20, 17, 28, 11, 9, 14, 17, 16, 17, 26],
    money: ["Amount", "Kept", "Amount refunded"],
  });
  plainSheet(workbook, {
    name: "Stops",
    note: "the return run of Wednesday 8 April; the first row is where it starts and ends",
    headings: scenario.stopHeadings,
    rows: scenario.stops,
    columnWidths: [24, 28, 26, 14, 10, 16, 12, 12, 13, 17],
  });
  shoesSheet(workbook, spills, scenario);
  totalsSheet(workbook, spills);
  lateSheet(workbook, spills, scenario);
  returnsSheet(workbook, spills, scenario);
  chaseSheet(workbook, spills, scenario);
  valueSheet(workbook, spills);
  moneySheet(workbook, spills);
  carrySheet(workbook, spills);
  runSheet(workbook, spills, scenario);
  for (const day of scenario.days) daySheet(workbook, spills, day);
  orderSheet(workbook, spills, scenario);
  workbook.definedNames.add("Job!$B$4", "AsOf");
  workbook.definedNames.add("Job!$B$5", "LastShootDay");
  workbook.definedNames.add("Job!$B$6", "CoverLimit");
  workbook.definedNames.add("Job!$B$7", "PieceLimit");
  return { workbook, spills };
}
