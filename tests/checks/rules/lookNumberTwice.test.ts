import { lookNumberTwice } from "../../../src/checks/rules/lookNumberTwice";
import { day } from "../day";
import { testRule } from "../testRule";

testRule(lookNumberTwice, {
  clean: [
    { title: "numbers of their own", tables: { looks: [["Look"], [1], [2], ["1a"], ["1.2"], [12]] } },
    {
      title: "days that number their looks anew",
      tables: {
        looks: [
          ["Look", "Date"],
          [1, day("2026-03-10")],
          [1, day("2026-03-11")],
        ],
      },
    },
    {
      title: "rows without a look",
      tables: {
        looks: [
          ["Look", "Talent"],
          [null, "Ana"],
          [null, "Bo"],
        ],
      },
    },
  ],
  findings: [
    {
      title: "one number on two rows of one day, however written",
      tables: {
        looks: [
          ["Look", "Date"],
          [7, day("2026-03-10")],
          [8, day("2026-03-10")],
          ["Look 07", day("2026-03-10")],
        ],
      },
      expect: [{ at: "looks!A4", messageId: "twice", data: { look: "07", cell: "A2" } }],
    },
  ],
});
