import { lookOrderTwice } from "../../../src/checks/rules/lookOrderTwice";
import { day } from "../day";
import { testRule } from "../testRule";

const looks = ["Look", "Order", "Date"];

testRule(lookOrderTwice, {
  clean: [
    {
      title: "each look in a place of its own",
      tables: { looks: [looks, [1, 2, null], [2, 1, null], [3, 2.5, null]] },
    },
    {
      title: "looks without a place, and blanks that arrive as 0",
      tables: { looks: [looks, [1, null, null], [2, null, null], [3, 0, null], [4, 0, null]] },
    },
    {
      title: "days that each count anew",
      tables: { looks: [looks, [1, 1, day("2026-03-10")], [2, 1, day("2026-03-11")]] },
    },
    {
      title: "one look on two rows, which another rule reports",
      tables: { looks: [looks, [1, 1, null], ["Look 1", 1, null]] },
    },
  ],
  findings: [
    {
      title: "a place given twice",
      tables: { looks: [looks, [1, 1, null], [2, 2, null], [3, 2, null]] },
      expect: [{ at: "looks!B4", messageId: "twice", data: { order: 2, cell: "B3" } }],
    },
    {
      title: "a place given three times, twice",
      tables: { looks: [looks, [1, 3, day("2026-03-10")], [2, 3, day("2026-03-10")], [3, 3, day("2026-03-10")]] },
      expect: [
        { at: "looks!B3", messageId: "twice", data: { cell: "B2" } },
        { at: "looks!B4", messageId: "twice", data: { cell: "B2" } },
      ],
    },
  ],
});
