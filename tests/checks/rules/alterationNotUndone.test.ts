import { alterationNotUndone } from "../../../src/checks/rules/alterationNotUndone";
import { day } from "../day";
import { testRule } from "../testRule";

const pieces = ["Piece", "Out", "Due", "Extended to", "Back", "Alteration", "Alteration undone", "Settled"];
const out = day("2026-03-02");
const soon = day("2026-03-08");

testRule(alterationNotUndone, {
  clean: [
    {
      title: "an alteration undone, by a tick, a word or a day",
      tables: {
        pieces: [
          pieces,
          ["P1", out, soon, null, null, "hem up 2 cm", true, null],
          ["P2", out, soon, null, null, "hem up 2 cm", "yes", null],
          ["P3", out, soon, null, day("2026-03-04"), "taken in", day("2026-03-04"), null],
        ],
      },
    },
    {
      title: "no alteration, said in several ways",
      tables: {
        pieces: [
          pieces,
          ["P1", out, soon, null, null, null, null, null],
          ["P2", out, soon, null, null, "none", null, null],
          ["P3", out, soon, null, null, "no", null, null],
          ["P4", out, soon, null, null, "-", null, null],
          ["P5", out, soon, null, null, false, null, null],
        ],
      },
    },
    {
      title: "a piece that is not due for some days, also by an extension",
      tables: {
        pieces: [
          pieces,
          ["P1", out, day("2026-03-09"), null, null, "taken in", null, null],
          ["P2", out, soon, day("2026-03-19"), null, "taken in", null, null],
        ],
      },
    },
    {
      title: "what need not be undone, or is settled, or has no due day",
      tables: {
        pieces: [
          pieces,
          ["P1", out, soon, null, null, "taken in", "n/a", null],
          ["P2", out, soon, null, null, "taken in", "lender keeps it so", null],
          ["P3", out, soon, null, null, "taken in", null, "bought"],
          ["P4", out, null, null, null, "taken in", null, null],
        ],
      },
    },
  ],
  findings: [
    {
      title: "a piece due soon, and one that is late",
      tables: {
        pieces: [
          pieces,
          ["P1", out, soon, null, null, "hem up 2 cm", null, null],
          ["P2", out, day("2026-03-03"), null, null, "x", "no", null],
        ],
      },
      expect: [
        { at: "pieces!G2", messageId: "due", data: { day: "2026-03-08", alteration: "hem up 2 cm" } },
        { at: "pieces!G3", messageId: "due", data: { day: "2026-03-03", alteration: "noted" } },
      ],
    },
    {
      title: "a piece that went back",
      tables: { pieces: [pieces, ["P1", out, soon, null, day("2026-03-04"), "taken in", "tbc", null]] },
      expect: [{ at: "pieces!G2", messageId: "back", data: { day: "2026-03-04" } }],
    },
  ],
});
