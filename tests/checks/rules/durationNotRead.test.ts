import { durationNotRead } from "../../../src/checks/rules/durationNotRead";
import { testRule } from "../testRule";

testRule(durationNotRead, {
  clean: [
    {
      title: "minutes as numbers and text",
      tables: {
        looks: [
          ["Look", "Change", "Shooting"],
          [1, 15, "20 min"],
          [2, "1h30", null],
        ],
      },
    },
    {
      title: "a clock time, which another rule reports",
      tables: {
        looks: [
          ["Look", "Change"],
          [1, 15 / 1440],
          [2, "0:15"],
        ],
      },
    },
    {
      title: "an error value, which another rule reports",
      tables: {
        looks: [
          ["Look", "Change"],
          [1, { error: "#N/A" }],
        ],
      },
    },
  ],
  findings: [
    {
      title: "words, and minutes below 0",
      tables: {
        looks: [
          ["Look", "Change", "Shooting"],
          [1, "long", -5],
        ],
        stops: [
          ["Stop", "Minutes"],
          ["Halden", "quick"],
        ],
      },
      expect: [
        { at: "looks!B2", messageId: "noMinutes", data: { given: "long" } },
        { at: "looks!C2", messageId: "noMinutes", data: { given: "-5" } },
        { at: "stops!B2", messageId: "noMinutes" },
      ],
    },
  ],
});
