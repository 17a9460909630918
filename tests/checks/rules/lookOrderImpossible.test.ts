import { lookOrderImpossible } from "../../../src/checks/rules/lookOrderImpossible";
import { day } from "../day";
import { testRule } from "../testRule";

const looks = ["Look", "Talent", "Shooting", "After", "Fixed", "Date"];

testRule(lookOrderImpossible, {
  clean: [
    {
      title: "an order that can be kept",
      tables: {
        looks: [
          looks,
          [1, "Ana", 20, null, "first", null],
          [2, "Bo", 20, "1", null, null],
          [3, "Ana", 20, "1; 2", "last", null],
        ],
      },
    },
    {
      title: "days of their own",
      tables: {
        looks: [
          looks,
          [1, "Ana", 20, null, "first", day("2026-03-10")],
          [2, "Bo", 20, null, "first", day("2026-03-11")],
        ],
      },
    },
    {
      title: "a look twice, which another rule reports",
      tables: { looks: [looks, [1, "Ana", 20, null, null, null], [1, "Bo", 20, null, null, null]] },
    },
    {
      title: "a circle, which another rule reports",
      tables: { looks: [looks, [1, "Ana", 20, "2", null, null], [2, "Bo", 20, "1", null, null]] },
    },
    {
      title: "a cell that cannot be read, which another rule reports",
      tables: { looks: [looks, [1, "Ana", "long", "2", null, null], [2, "Bo", 20, null, null, null]] },
    },
  ],
  findings: [
    {
      title: "a look before the one it must follow",
      tables: { looks: [looks, [1, "Ana", 20, "2", null, null], [2, "Bo", 20, null, null, null]] },
      expect: [{ at: "looks!D2", messageId: "impossible" }],
    },
    {
      title: "a look that must follow one that is not there",
      tables: {
        looks: [
          looks,
          [1, "Ana", 20, null, null, day("2026-03-10")],
          [2, "Bo", 20, "1", null, day("2026-03-10")],
          [3, "Bo", 20, "9", null, day("2026-03-11")],
        ],
      },
      expect: [{ at: "looks!D4", messageId: "impossible" }],
    },
    {
      title: "two looks with one fixed place",
      tables: { looks: [looks, [1, "Ana", 20, null, "first", null], [2, "Bo", 20, null, 1, null]] },
      expect: [{ at: "looks!E3", messageId: "impossible" }],
    },
  ],
});
