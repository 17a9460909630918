import { solesTapedForInside } from "../../../src/checks/rules/solesTapedForInside";
import { day } from "../day";
import { testRule } from "../testRule";

const heading = ["Piece", "Kind", "Look", "Note", "Back", "Tape off"] as const;
const looks = [
  ["Look", "Where"],
  [1, "Studio"],
  [2, "outdoors"],
  [3, null],
] as const;

testRule(solesTapedForInside, {
  clean: [
    { title: "gaffer over it", tables: { pieces: [heading, ["P1", "shoes", 2, "soles taped, gaffer on top"]], looks } },
    {
      title: "a look inside, or nowhere said",
      tables: { pieces: [heading, ["P1", "shoes", "1, 3", "soles taped"]], looks },
    },
    {
      title: "notes that speak of no tape",
      tables: { pieces: [heading, ["P1", "shoes", 2, "scuffed heel"], ["P2", "boots", 2]], looks },
    },
    { title: "what is not worn on the feet", tables: { pieces: [heading, ["P1", "dress", 2, "tape the hem"]], looks } },
    {
      title: "tape that is off again, and shoes that are back",
      tables: {
        pieces: [
          heading,
          ["P1", "shoes", 2, "tape off", null, null],
          ["P2", "shoes", 2, "soles taped", null, "yes"],
          ["P3", "shoes", 2, "soles taped", day("2026-03-04"), null],
        ],
        looks,
      },
    },
  ],
  findings: [
    {
      title: "painter's tape alone for a look outside",
      tables: { pieces: [heading, ["P1", "boots", "1, 2", "Painter's tape on soles"]], looks },
      expect: [{ at: "pieces!D2", messageId: "noGaffer", data: { look: "2" } }],
    },
  ],
});
