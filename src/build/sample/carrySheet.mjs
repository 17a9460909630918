import { answerSheet, facts, question, SHOWN, spill } from "./answers.mjs";
import { rowsWhere } from "./formulas.mjs";

/** What is still out and packed into a bag. */
const TO_CARRY = '(Loans[Date back]="")*(Loans[Settled]="")*(Loans[Bag]<>"")';

/** What there is to carry, in how many bags, and whether it should be lifted at all. */
export function carrySheet(workbook, spills) {
  const sheet = answerSheet(workbook, {
    name: "Carry",
    about: "What there is to carry",
    note: "Weights are typical ones where the sheet has none. Carrying injures: share loads, follow local rules.",
    columnWidths: [52, 12, 4, 16, 9, 11, 11, 11, 4, 14, 10, 8],
  });
  const rows = rowsWhere("Loans", TO_CARRY);
  facts(sheet, spills, 4, 1, [
    ["What is packed to go back"],
    ["How much is there to carry? (kg)", { formula: `_xldudf_TACK_CARRIED(${rows})` }, SHOWN.one],
    ["One bag may weigh (kg)", 12],
    ["How many bags does that make?", { formula: "MAX(L6:L200)" }],
    null,
    ["Lifting the blue holdall into the van"],
    [
      "It weighs (kg)",
      { formula: `_xldudf_TACK_CARRIED(${rowsWhere("Loans", `${TO_CARRY}*(Loans[Bag]="blue holdall")`)})` },
      SHOWN.one,
    ],
    ["Hands in front of the ankles (cm)", 35],
    ["Hands above the floor (cm)", 30],
    ["Lifted by (cm)", 50],
    ["Turned by (degrees)", 0],
    ["Lifts a minute", 0.2],
    ["Hours of lifting", 1],
    ["Grip", "poor"],
    [
      "How much may one lift in this way? (kg)",
      { formula: "_xldudf_TACK_LIFTLIMIT(B11,B12,B13,B14,B15,B16,B17)" },
      SHOWN.one,
    ],
    [
      "Is the holdall too heavy? (above 1 is over the limit)",
      { formula: "_xldudf_TACK_LIFTINDEX(B10,B11,B12,B13,B14,B15,B16,B17)" },
      SHOWN.two,
    ],
    null,
    ["A parcel by courier"],
    ["Length (cm)", 62],
    ["Width (cm)", 49],
    ["Height (cm)", 39],
    ["On the scales (kg)", 10],
    ["The courier's divisor", 5000],
    [
      "What weight will the courier charge for? (kg)",
      { formula: "_xldudf_TACK_PARCELWEIGHT(B22,B23,B24,B25,B26,0.5)" },
      SHOWN.one,
    ],
  ]);
  question(sheet, "D4", "Where does the weight come from? (kg)");
  spill(sheet, spills, "D5", `_xldudf_TACK_WEIGHTS(${rows})`, 5);
  question(sheet, "J4", "What goes into which bag? (kg)");
  spill(sheet, spills, "J5", `_xldudf_TACK_BAGS(${rows},B6)`, 3);
}
