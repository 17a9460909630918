import { answerSheet, facts, question, SHOWN, spill } from "./answers.mjs";

/** The order of the return run that ends soonest, and what its miles may be charged at. */
export function runSheet(workbook, spills, scenario) {
  const sheet = answerSheet(workbook, {
    name: "Run order",
    about: "The return run",
    note: "from the doors on Stops, by the way the crow flies; ring ahead where a minute decides",
    columnWidths: [24, 10, 9, 10, 4, 34, 17],
  });
  question(sheet, "A4", "In which order do I go round?");
  spill(sheet, spills, "A5", "_xldudf_TACK_RUNORDER(Stops[#All],,G5)", 4, {
    1: { format: SHOWN.time, rows: 30 },
    3: { format: SHOWN.time, rows: 30 },
  });
  facts(sheet, spills, 4, 6, [
    ["The run"],
    ["Leave the studio at", scenario.runStart],
    ["Day of the run", scenario.runDay],
    ["Miles driven", scenario.runMiles],
    ["What may I charge for the miles?", { formula: '_xldudf_TACK_RUNCOST(G6,G7,"UK")' }, SHOWN.pence],
  ]);
}
