import { tapeNotOff } from "../../../src/checks/rules/tapeNotOff";
import { day } from "../day";
import { testRule } from "../testRule";

const pieces = ["Piece", "Description", "Kind", "Out", "Due", "Back", "Tape off"];
const out = day("2026-03-02");
const soon = day("2026-03-08");

testRule(tapeNotOff, {
  clean: [
    {
      title: "tape off, or none on",
      tables: {
        pieces: [
          pieces,
          ["P1", null, "Shoes", out, soon, null, true],
          ["P2", null, "Boots", out, soon, day("2026-03-04"), day("2026-03-04")],
          ["P3", null, "Pumps", out, soon, null, "n/a"],
        ],
      },
    },
    {
      title: "pieces that have no soles, or of no kind that is known",
      tables: {
        pieces: [
          pieces,
          ["P1", null, "Coat", out, soon, null, null],
          ["P2", "Shoe bag", null, out, soon, null, null],
          ["P3", "Something", null, out, soon, null, null],
        ],
      },
    },
    {
      title: "shoes that are not due for some days, or not out",
      tables: {
        pieces: [
          pieces,
          ["P1", null, "Shoes", out, day("2026-03-20"), null, null],
          ["P2", null, "Shoes", null, soon, null, null],
          ["P3", null, "Shoes", day("2026-03-06"), soon, null, null],
        ],
      },
    },
  ],
  findings: [
    {
      title: "shoes due soon, by their kind or their description",
      tables: {
        pieces: [
          pieces,
          ["P1", null, "Shoes", out, soon, null, null],
          ["P2", "Black ankle boots", null, out, soon, null, "no"],
        ],
      },
      expect: [
        { at: "pieces!G2", messageId: "due", data: { day: "2026-03-08" } },
        { at: "pieces!G3", messageId: "due" },
      ],
    },
    {
      title: "shoes that went back",
      tables: { pieces: [pieces, ["P1", null, "Sandals", out, soon, day("2026-03-05"), null]] },
      expect: [{ at: "pieces!G2", messageId: "back", data: { day: "2026-03-05" } }],
    },
  ],
});
