import { answerSheet, facts, question, SHOWN, spill } from "./answers.mjs";
import { columnsOf, inRowOf } from "./formulas.mjs";

const CLOSED = "ClosedDays[Closed]";
const DUE_COLUMNS = ["Item no.", "Description", "Lender", "Return due", "Bag"];
const ADDED = ["Missing", "Damaged", "Value missing"];
const SHORT_COLUMNS = ["Item no.", "Description", "Lender", "Cond. back", ...ADDED];

/** What goes back soon, one piece from its slip to its fee, and what came back short or damaged. */
export function returnsSheet(workbook, spills, scenario) {
  const sheet = answerSheet(workbook, {
    name: "Returns",
    about: "What goes back, and what came back wrong",
    note: "Type another piece into the shaded cell.",
    columnWidths: [9, 30, 24, 13, 14, 4, 40, 22, 4, 9, 28, 24, 18, 9, 10, 14],
  });
  question(sheet, "A4", "What goes back on the as-of day and in the three days after?");
  spill(
    sheet,
    spills,
    "A5",
    columnsOf("_xldudf_TACK_DUEROWS(Loans[#All],AsOf,AsOf+3)", scenario.headings, DUE_COLUMNS),
    DUE_COLUMNS.length,
    { 3: { format: SHOWN.date, rows: 80 } },
  );
  const piece = (heading) => inRowOf("Loans", "Item no.", "$H$5", heading);
  const lender = (heading) => inRowOf("Lenders", "Lender", "$H$7", heading);
  const due = `IF(${piece("Extended to")}=0,${piece("Return due")},${piece("Extended to")})`;
  const [out, back] = [piece("Date out"), piece("Date back")];
  facts(sheet, spills, 4, 7, [
    ["One piece, from slip to fee"],
    ["Item no.", scenario.pieceToLookAt],
    ["What it is", { formula: piece("Description") }],
    ["Whose it is", { formula: piece("Lender") }],
    [
      "When is it due back?",
      { formula: `_xldudf_TACK_DUE(${out},${piece("Terms")},LastShootDay,${CLOSED})` },
      SHOWN.day,
    ],
    [
      "When must it leave to be back in time?",
      { formula: `_xldudf_TACK_SENDBY(${due},${lender("Courier days")},0,${CLOSED})` },
      SHOWN.day,
    ],
    ["How long have we had it? (days)", { formula: `_xldudf_TACK_DAYSOUT(${out},${back},AsOf)` }],
    ["How late is it? (days)", { formula: `_xldudf_TACK_DAYSLATE(${due},${back},AsOf)` }],
    [
      "Where does this loan stand?",
      { formula: `_xldudf_TACK_LOANSTATE(${out},${due},${back},AsOf,3,${piece("Settled")})` },
    ],
    [
      "What does being late cost?",
      { formula: `_xldudf_TACK_LATEFEE(${piece("Ins. value")},H11,${lender("Late fee")})` },
      SHOWN.pence,
    ],
  ]);
  question(sheet, "J4", "What is missing or damaged, and what is it worth?");
  spill(
    sheet,
    spills,
    "J5",
    columnsOf("_xldudf_TACK_SHORTAGES(Loans[#All])", scenario.headings, SHORT_COLUMNS, ADDED),
    SHORT_COLUMNS.length,
    { 6: { format: SHOWN.amount, rows: 20 } },
  );
}
