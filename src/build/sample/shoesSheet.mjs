import { facts, question, SHOWN, spill } from "./answers.mjs";
import { plainSheet } from "./plainSheet.mjs";

/** The soles that are taped before the shoot, and what tape they take. */
export function shoesSheet(workbook, spills, scenario) {
  const sheet = plainSheet(workbook, {
    name: "Shoes",
    note: "soles to be taped: painter's tape inside, cloth gaffer tape over it outside",
    headings: scenario.shoeHeadings,
    rows: scenario.shoes,
    columnWidths: [30, 9, 12, 8, 8, 18, 4, 30, 9, 15, 13, 4, 36, 12],
  });
  question(sheet, "H3", "How much tape do the soles take? (metres)");
  spill(sheet, spills, "H4", "_xldudf_TACK_TAPE(Shoes[#All])", 4, {
    2: { format: SHOWN.two, rows: 40 },
    3: { format: SHOWN.two, rows: 40 },
  });
  facts(sheet, spills, 4, 13, [
    ["Rolls and sizes"],
    ["Painter's tape in all (m)", { formula: "SUM(J5:J60)" }, SHOWN.one],
    ["Gaffer tape in all (m)", { formula: "SUM(K5:K60)" }, SHOWN.one],
    ["European size", 39],
    ["Which size is that in the UK?", { formula: '_xldudf_TACK_SHOESIZE(N7,"EU","UK")' }],
    ["And in the US, for women?", { formula: '_xldudf_TACK_SHOESIZE(N7,"EU","US women")' }],
  ]);
}
