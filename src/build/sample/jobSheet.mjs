import { addTable } from "./addTable.mjs";
import { input, question, SHOWN, spill } from "./answers.mjs";
import { title, widths } from "./cells.mjs";
import { rowsWhere } from "./formulas.mjs";

/** What the whole workbook counts from, the people of the days, and the job in a few lines. */
export function jobSheet(workbook, spills, scenario) {
  const sheet = workbook.addWorksheet("Job");
  title(sheet, `${scenario.title}: two-day shoot`, "Change the as-of day and every sheet follows.");
  widths(sheet, [38, 20, 4, 18, 30, 4, 22, 14, 4, 18, 30]);
  const facts = [
    ["As-of day", scenario.asOf],
    ["Last shoot day", scenario.lastShootDay],
    ["Insurance limit, all pieces", scenario.coverLimit, SHOWN.money],
    ["Insurance limit, one piece", scenario.pieceLimit, SHOWN.money],
    ["Value out, the whole pull", { formula: "_xldudf_TACK_VALUEOUT(Loans[#All],AsOf)" }, SHOWN.money],
    ["Lender to look at", scenario.lenderToLookAt],
    [
      "Value out with that lender",
      { formula: `_xldudf_TACK_VALUEOUT(${rowsWhere("Loans", "Loans[Lender]=B9")},AsOf)` },
      SHOWN.money,
    ],
    ["Day of a return run", scenario.returnRun],
    [
      "Carried on that run, kg",
      { formula: `_xldudf_TACK_CARRIED(${rowsWhere("Loans", "Loans[Date back]=B11")})` },
      SHOWN.one,
    ],
  ];
  facts.forEach(([label, typed, format], i) => {
    const cell = sheet.getCell(4 + i, 2);
    sheet.getCell(4 + i, 1).value = label;
    if (typeof typed === "object") spill(sheet, spills, cell.address, typed.formula);
    else input(cell, typed);
    if (format !== undefined) cell.numFmt = format;
  });
  sheet.getCell(14, 1).value =
    "A figure above shows #VALUE! while a piece it needs cannot be read; the Check view in the pane says which.";
  sheet.getCell(15, 1).value =
    "Weights are typical ones where the sheet has none. Carrying injures: share loads, follow local rules.";
  scenario.jobFacts.forEach(([label, says], i) => {
    sheet.getCell(17 + i, 1).value = label;
    sheet.getCell(17 + i, 2).value = says;
  });
  question(sheet, "A24", "Where is what?");
  scenario.whereIsWhat.forEach(([asked, name], i) => {
    sheet.getCell(25 + i, 1).value = asked;
    sheet.getCell(25 + i, 2).value = name;
  });
  addTable(sheet, "ClosedDays", 4, 4, ["Closed", "Why"], scenario.closedDays);
  addTable(sheet, "People", 4, 7, ["What", "How many"], scenario.people);
  question(sheet, "J3", "On which days is nobody there to take it back?");
  spill(sheet, spills, "J4", '_xldudf_TACK_HOLIDAYS("England and Wales",DATE(2026,3,1),DATE(2026,5,31))', 2);
}
