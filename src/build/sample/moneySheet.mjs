import { answerSheet, facts, question, SHOWN, spill } from "./answers.mjs";

/** What is to come back from the shops, and how each job stands. */
export function moneySheet(workbook, spills) {
  const sheet = answerSheet(workbook, {
    name: "Money",
    about: "What comes back, and how each job stands",
    note: "from Receipts, and the rental fees and deposits on Loans",
    columnWidths: [20, 13, 11, 14, 4, 18, 12, 12, 12, 14, 12, 14, 4, 48, 12],
  });
  const amounts = (rows, ...columns) => Object.fromEntries(columns.map((at) => [at, { format: SHOWN.amount, rows }]));
  question(sheet, "A4", "What must go back to which shop, by when?");
  spill(sheet, spills, "A5", "_xldudf_TACK_REFUNDS(Receipts[#All],AsOf)", 4, {
    1: { format: SHOWN.date, rows: 20 },
    ...amounts(20, 3),
  });
  question(sheet, "F4", "How does the money of each job stand?");
  spill(
    sheet,
    spills,
    "F5",
    "_xldudf_TACK_JOBMONEY(_xlfn.VSTACK(Receipts[#All],Loans[#All]))",
    7,
    amounts(8, 1, 2, 3, 4, 5, 6),
  );
  facts(sheet, spills, 4, 14, [
    ["What does it cost to take nearly everything back?"],
    ["Taken on the house account", 2400, SHOWN.pence],
    ["Kept of it", 500, SHOWN.pence],
    ["Share the shop wants kept", 0.3, SHOWN.share],
    ["Charge on what is short of that", 0.2, SHOWN.share],
    ["The charge", { formula: "_xldudf_TACK_KEEPCOST(O5,O6,O7,O8)" }, SHOWN.pence],
  ]);
}
