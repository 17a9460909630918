import { lookOrderGap } from "../../../src/checks/rules/lookOrderGap";
import { day } from "../day";
import { testRule } from "../testRule";

const looks = ["Look", "Order", "Date"];

testRule(lookOrderGap, {
  clean: [
    {
      title: "places that follow each other, in any row",
      tables: { looks: [looks, [1, 3, null], [2, 1, null], [3, 2, null]] },
    },
    { title: "places in tens", tables: { looks: [looks, [1, 10, null], [2, 20, null], [3, 30, null], [4, 40, null]] } },
    {
      title: "a second day that counts on, or anew",
      tables: {
        looks: [
          looks,
          [1, 1, day("2026-03-10")],
          [2, 2, day("2026-03-10")],
          [3, 7, day("2026-03-11")],
          [4, 8, day("2026-03-11")],
        ],
      },
    },
    {
      title: "a look put in between",
      tables: { looks: [looks, [1, 1, null], [2, 2, null], [3, 2.5, null], [4, 3, null]] },
    },
    { title: "two looks alone", tables: { looks: [looks, [1, 1, null], [2, 9, null]] } },
    {
      title: "a place given twice, which another rule reports",
      tables: { looks: [looks, [1, 1, null], [2, 1, null], [3, 2, null]] },
    },
  ],
  findings: [
    {
      title: "a number left out",
      tables: { looks: [looks, [1, 1, null], [2, 2, null], [3, 4, null], [4, 5, null]] },
      expect: [{ at: "looks!B4", messageId: "gap", data: { before: 2, order: 4 } }],
    },
    {
      title: "several left out, on its own day",
      tables: {
        looks: [
          looks,
          [1, 1, day("2026-03-10")],
          [2, 2, day("2026-03-10")],
          [3, 3, day("2026-03-10")],
          [4, 7, day("2026-03-10")],
          [5, 4, day("2026-03-11")],
        ],
      },
      expect: [{ at: "looks!B5", messageId: "gap", data: { before: 3, order: 7 } }],
    },
  ],
});
