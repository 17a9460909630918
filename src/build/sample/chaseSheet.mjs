import { answerSheet, question, SHOWN, spill } from "./answers.mjs";
import { columnsOf } from "./formulas.mjs";

/** The requests that want a call on the as-of day. */
export function chaseSheet(workbook, spills, scenario) {
  const sheet = answerSheet(workbook, {
    name: "To chase",
    about: "Whom to ring",
    note: "unanswered for two working days, or promised and not fetched while the need is near; from Requests",
    columnWidths: [24, 12, 34, 13, 13, 10, 28],
  });
  question(sheet, "A4", "Whom must I ring today?");
  const wanted = ["Lender", "Contact", "Wanted", "Asked", "Needed by", "Answer", "Collect"];
  spill(
    sheet,
    spills,
    "A5",
    columnsOf("_xldudf_TACK_CHASEROWS(Requests[#All],AsOf,2,ClosedDays[Closed])", scenario.requestHeadings, wanted),
    wanted.length,
    { 3: { format: SHOWN.date, rows: 20 }, 4: { format: SHOWN.date, rows: 20 } },
  );
}
