import { solesNotTaped } from "../../../src/checks/rules/solesNotTaped";
import { day } from "../day";
import { testRule } from "../testRule";

const heading = ["Piece", "Kind", "Look", "Note", "Back", "Tape off"] as const;
const taped = ["P0", "shoes", 1, "soles taped", null, null] as const;
const looks = [
  ["Look", "Where", "Date"],
  [1, "Studio", day("2026-03-06")],
  [2, "street", day("2026-03-06")],
  [3, "outdoors", day("2026-03-05")],
  [4, "outdoors", day("2026-03-07")],
  [5, "outdoors", day("2026-03-04")],
  [6, "outdoors", null],
] as const;

testRule(solesNotTaped, {
  clean: [
    {
      title: "a sheet that says nothing of tape",
      tables: { pieces: [heading, ["P1", "shoes", 2, "scuffed heel"], ["P2", "boots", 3]], looks },
    },
    {
      title: "looks inside, later, past or without a day",
      tables: {
        pieces: [heading, taped, ["P1", "shoes", 1], ["P2", "boots", 4], ["P3", "shoes", 5], ["P4", "shoes", 6]],
        looks,
      },
    },
    {
      title: "tape of either kind, and what is not worn on the feet",
      tables: {
        pieces: [
          heading,
          taped,
          ["P1", "shoes", 2, "gaffered"],
          ["P2", "shoes", 3, "painter's tape"],
          ["P3", "dress", 3],
        ],
        looks,
      },
    },
    {
      title: "shoes that are back, or whose tape is off again",
      tables: {
        pieces: [
          heading,
          taped,
          ["P1", "shoes", 3, null, day("2026-03-05"), null],
          ["P2", "shoes", 3, null, null, "yes"],
        ],
        looks,
      },
    },
  ],
  findings: [
    {
      title: "bare soles for a look on the street tomorrow, and for one outdoors today",
      tables: { pieces: [heading, taped, ["P1", "boots", "1, 2", "scuffed heel"], ["P2", "shoes", 3]], looks },
      expect: [
        { at: "pieces!D3", messageId: "bare", data: { look: "2", day: "2026-03-06" } },
        { at: "pieces!D4", messageId: "bare", data: { look: "3", day: "2026-03-05" } },
      ],
    },
  ],
});
