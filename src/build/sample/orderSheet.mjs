import { answerSheet, facts, question, SHOWN, spill } from "./answers.mjs";
import { rowsWhere } from "./formulas.mjs";

/** The best order of a day, what a look cannot have, and how long a change takes. */
export function orderSheet(workbook, spills, scenario) {
  const sheet = answerSheet(workbook, {
    name: "Best order",
    about: "The order that ends soonest",
    note: "Type another shoot day into the shaded cell; nothing on Looks is changed.",
    columnWidths: [36, 18, 13, 12, 12, 12, 26, 9, 4, 12, 9, 12, 60, 4, 22, 34],
  });
  const looks = rowsWhere("Looks", "Looks[Date]=B5");
  const ofDay = (row) =>
    scenario.days.reduceRight((rest, { sheet: name }) => `IF(B5='${name}'!B4,'${name}'!B${row},${rest})`, "NA()");
  facts(sheet, spills, 4, 1, [
    ["The day"],
    ["Day to look at", scenario.days[0].date],
    ["Everybody is there at", { formula: ofDay(5) }, SHOWN.time],
    ["It ends by", { formula: ofDay(6) }, SHOWN.time],
    ["Minutes to spare as it is", { formula: `_xldudf_TACK_DAYFIT(${looks},B6,B7,People[])` }],
    ["Minutes to spare in the order below", { formula: "ROUND((B7-MAX(F12:F60))*1440,0)" }],
  ]);
  spill(sheet, spills, "A11", `_xldudf_TACK_LOOKORDER(${looks},B6,People[])`, 8);
  question(sheet, "J4", "Is everything there for every look?");
  spill(sheet, spills, "J5", "_xldudf_TACK_CLASHES(Loans[#All],Looks[#All])", 4);
  facts(sheet, spills, 4, 15, [
    ["How long does a change take?"],
    ["Wearing", "shirt, trousers, shoes, coat"],
    ["Next", "dress, boots, scarf"],
    ["Minutes", { formula: "_xldudf_TACK_CHANGETIME(P5,P6)" }, SHOWN.one],
  ]);
}
