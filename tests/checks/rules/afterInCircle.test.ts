import { afterInCircle } from "../../../src/checks/rules/afterInCircle";
import { day } from "../day";
import { testRule } from "../testRule";

const looks = ["Look", "Talent", "Shooting", "After", "Date"];

testRule(afterInCircle, {
  clean: [
    {
      title: "looks that follow each other in a row",
      tables: { looks: [looks, [1, "Ana", 20, null, null], [2, "Bo", 20, "1", null], [3, "Bo", 20, "1; 2", null]] },
    },
    {
      title: "a look that must follow a later one, which another rule reports",
      tables: { looks: [looks, [1, "Ana", 20, "2", null], [2, "Bo", 20, null, null]] },
    },
    {
      title: "a look that must follow one that is not there, which another rule reports",
      tables: { looks: [looks, [1, "Ana", 20, "9", null], [2, "Bo", 20, "1", null]] },
    },
    {
      title: "the same numbers on two days",
      tables: {
        looks: [
          looks,
          [1, "Ana", 20, "2", day("2026-03-10")],
          [2, "Bo", 20, null, day("2026-03-10")],
          [2, "Bo", 20, "1", day("2026-03-11")],
        ],
      },
    },
  ],
  findings: [
    {
      title: "two looks that wait for each other, even where another cell cannot be read",
      tables: { looks: [looks, [1, "Ana", "long", "look 2", null], [2, "Bo", 20, 1, null]] },
      expect: [{ at: "looks!D2", messageId: "circle", data: { looks: "1 after 2 after 1" } }],
    },
    {
      title: "a look that waits for itself",
      tables: { looks: [looks, ["Look 1", "Ana", 20, "1", null]] },
      expect: [{ at: "looks!D2", messageId: "circle", data: { looks: "1 after 1" } }],
    },
    {
      title: "each of two circles once",
      tables: {
        looks: [
          looks,
          [1, "Ana", 20, "2", null],
          [2, "Bo", 20, "1", null],
          [3, "Ana", 20, "4, 2", null],
          [4, "Bo", 20, "3", null],
        ],
      },
      expect: [
        { at: "looks!D2", messageId: "circle", data: { looks: "1 after 2 after 1" } },
        { at: "looks!D4", messageId: "circle", data: { looks: "3 after 4 after 3" } },
      ],
    },
  ],
});
