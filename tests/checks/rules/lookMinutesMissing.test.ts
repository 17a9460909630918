import { lookMinutesMissing } from "../../../src/checks/rules/lookMinutesMissing";
import { testRule } from "../testRule";

testRule(lookMinutesMissing, {
  clean: [
    {
      title: "minutes for every look, also 0",
      tables: {
        looks: [
          ["Look", "Change", "Shooting"],
          [1, 10, 30],
          [2, 0, 20],
        ],
      },
    },
    {
      title: "a day that is still being timed: most have none",
      tables: {
        looks: [
          ["Look", "Change", "Shooting"],
          [1, 10, 30],
          [2, null, null],
          [3, null, null],
        ],
      },
    },
    {
      title: "no such columns",
      tables: {
        looks: [
          ["Look", "Talent"],
          [1, "Ana"],
        ],
      },
    },
    {
      title: "likely minutes in place of change minutes",
      tables: {
        looks: [
          ["Look", "Change", "Likely"],
          [1, 10, null],
          [2, null, 12],
        ],
      },
    },
    {
      title: "minutes that cannot be read, which another rule reports",
      tables: {
        looks: [
          ["Look", "Shooting"],
          [1, 30],
          [2, "long"],
        ],
      },
    },
  ],
  findings: [
    {
      title: "the look that has none",
      tables: {
        looks: [
          ["Look", "Change", "Shooting"],
          [1, 10, 30],
          [2, null, 20],
          [3, 15, null],
        ],
      },
      expect: [
        { at: "looks!B3", messageId: "change", data: { look: "2" } },
        { at: "looks!C4", messageId: "shooting", data: { look: "3" } },
      ],
    },
  ],
});
