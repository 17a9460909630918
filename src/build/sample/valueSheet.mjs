import { answerSheet, facts, question, SHOWN, spill } from "./answers.mjs";
import { rowsWhere } from "./formulas.mjs";

/** Only pieces whose value and return can be read: one that cannot makes the total an error, as on the sheet Job. */
const READABLE = "ISNUMBER(Loans[Ins. value])*(1-ISTEXT(Loans[Date back]))";

/** The value on the rail against the insurance. */
export function valueSheet(workbook, spills) {
  const sheet = answerSheet(workbook, {
    name: "Value",
    about: "What is on the rail, and what is covered",
    note: "Pieces whose value or return cannot be read are left out here; the Check view names them.",
    columnWidths: [46, 16, 4, 16, 13, 13, 14, 14, 4, 13, 9, 14, 10],
  });
  const rows = rowsWhere("Loans", READABLE);
  facts(sheet, spills, 4, 1, [
    ["On one day"],
    ["Day to look at", { formula: "AsOf" }, SHOWN.day],
    ["How much is on the rail that day?", { formula: `_xldudf_TACK_VALUEOUT(${rows},B5)` }, SHOWN.money],
    [
      "How much was on it on the last shoot day?",
      { formula: `_xldudf_TACK_VALUEOUT(${rows},LastShootDay)` },
      SHOWN.money,
    ],
    ["Insurance limit, all pieces", { formula: "CoverLimit" }, SHOWN.money],
    ["Rows left out: value or return not known", { formula: `COUNTA(Loans[Item no.])-SUM(${READABLE})` }],
  ]);
  question(sheet, "D4", "When is most at risk?");
  spill(sheet, spills, "D5", `_xldudf_TACK_PEAKVALUE(${rows})`, 3, {
    0: { format: SHOWN.date, rows: 1 },
    2: { format: SHOWN.amount, rows: 1 },
  });
  question(sheet, "D8", "When, and for what, is the cover not enough?");
  spill(sheet, spills, "D9", `_xldudf_TACK_COVERGAP(${rows},CoverLimit,PieceLimit)`, 5, {
    1: { format: SHOWN.date, rows: 20 },
    2: { format: SHOWN.date, rows: 20 },
    3: { format: SHOWN.amount, rows: 20 },
    4: { format: SHOWN.amount, rows: 20 },
  });
  question(sheet, "J4", "How does the value on the rail rise and fall?");
  spill(sheet, spills, "J5", `_xldudf_TACK_VALUEBYDAY(${rows},LastShootDay-11,AsOf)`, 4, {
    0: { format: SHOWN.date, rows: 40 },
    2: { format: SHOWN.amount, rows: 40 },
  });
}
