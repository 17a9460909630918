import { facts, SHOWN, spill } from "./answers.mjs";
import { put, title, widths } from "./cells.mjs";
import { inRowOf, rowsWhere } from "./formulas.mjs";

/** One shoot day: call and wrap, whether it fits, and when each look is changed, ready and shot. */
export function daySheet(workbook, spills, day) {
  const sheet = workbook.addWorksheet(day.sheet, { properties: { tabColor: { argb: "FF17776C" } } });
  title(sheet, day.sheet, "timed from Looks and the people on Job; change a minute there and watch the wrap");
  widths(sheet, [24, 18, 14, 13, 13, 13, 26, 9]);
  [
    ["Date", day.date],
    ["Call", day.call],
    ["Wrap", day.wrap],
  ].forEach(([label, typed], i) => {
    sheet.getCell(4 + i, 1).value = label;
    put(sheet.getCell(4 + i, 2), typed);
  });
  const looks = rowsWhere("Looks", "Looks[Date]=B4");
  const next = `_xldudf_TACK_NEXTLOOK(${looks},G6,B5,People[])`;
  sheet.getCell(7, 1).value = "Minutes to spare at wrap";
  spill(sheet, spills, "B7", `_xldudf_TACK_DAYFIT(${looks},B5,B6,People[])`);
  facts(
    sheet,
    spills,
    4,
    4,
    [
      [
        "By when must everybody eat?",
        { formula: `_xldudf_TACK_MEALBY(B5,${inRowOf("People", "What", '"meal after hours"', "How many")})` },
        SHOWN.time,
      ],
      ["How sure is an end in time?", { formula: `_xldudf_TACK_DAYCHANCE(${looks},B5,B6,People[])` }, SHOWN.share],
      ["Time now (type Shot at on Looks)", day.now],
      [
        "What is next, and when?",
        { formula: `IFERROR("look "&INDEX(${next},2,1)&", in "&INDEX(${next},2,4)&" minutes","all shot")` },
      ],
    ],
    3,
  );
  spill(sheet, spills, "A9", `_xldudf_TACK_DAYPLAN(${looks},B5,People[])`, 8);
}
