import { durationAsTime } from "../../../src/checks/rules/durationAsTime";
import { testRule } from "../testRule";

testRule(durationAsTime, {
  clean: [
    {
      title: "minutes as numbers and text, 0 and blanks",
      tables: {
        looks: [
          ["Look", "Change", "Shooting"],
          [1, 15, "20 min"],
          [2, 0, "1h30"],
          [3, null, 1.5],
        ],
      },
    },
    {
      title: "a time of day where one belongs",
      tables: {
        looks: [
          ["Look", "Arrives"],
          [1, 0.375],
        ],
        stops: [
          ["Stop", "Open"],
          ["Halden", 0.4],
        ],
      },
    },
    {
      title: "words, which another rule reports",
      tables: {
        looks: [
          ["Look", "Change"],
          [1, "long"],
        ],
      },
    },
  ],
  findings: [
    {
      title: "a clock time, as the sheet keeps it and as text",
      tables: {
        looks: [
          ["Look", "Change", "Shooting"],
          [1, 15 / 1440, "0:20"],
          [2, 65 / 1440, "1:30"],
        ],
        stops: [
          ["Stop", "Minutes"],
          ["Halden", 10 / 1440],
        ],
      },
      expect: [
        { at: "looks!B2", messageId: "asTime", data: { clock: "0:15", minutes: 15 }, fix: { "looks!B2": 15 } },
        { at: "looks!C2", messageId: "asTime", data: { clock: "0:20", minutes: 20 }, fix: { "looks!C2": 20 } },
        { at: "looks!B3", messageId: "asTime", fix: { "looks!B3": 65 } },
        { at: "looks!C3", messageId: "asTime", fix: { "looks!C3": 90 } },
        { at: "stops!B2", messageId: "asTime", fix: { "stops!B2": 10 } },
      ],
    },
    {
      title: "a round fraction that may be meant otherwise, and hours on end, as suggestions",
      tables: {
        looks: [
          ["Look", "Change"],
          [1, 0.5],
          [2, "9:30"],
        ],
      },
      expect: [
        {
          at: "looks!B2",
          messageId: "fraction",
          data: { number: 0.5, minutes: 720 },
          suggestions: [{ "looks!B2": 720 }],
        },
        { at: "looks!B3", messageId: "asTime", suggestions: [{ "looks!B3": 570 }] },
      ],
    },
    {
      title: "a formula's time, without writing over it",
      tables: {
        looks: [
          ["Look", "Change"],
          [1, 15 / 1440],
        ],
      },
      formulas: { "looks!B2": "=Z1-Y1" },
      expect: [{ at: "looks!B2", messageId: "asTime" }],
    },
  ],
});
