import { quantityBackMissing } from "../../../src/checks/rules/quantityBackMissing";
import { day } from "../day";
import { testRule } from "../testRule";

const pieces = ["Piece", "Quantity", "Back", "Quantity back", "Condition back", "Note"];
const back = day("2026-03-04");

testRule(quantityBackMissing, {
  clean: [
    {
      title: "all back and nothing said",
      tables: { pieces: [pieces, ["P1", 3, back, null, "good", "worn in look 3"]] },
    },
    { title: "the quantity back said", tables: { pieces: [pieces, ["P1", 3, back, 2, "1 missing", null]] } },
    {
      title: "a single piece",
      tables: {
        pieces: [pieces, ["P1", 1, back, null, "button missing", null], ["P2", null, back, null, "lost belt", null]],
      },
    },
    { title: "a piece that is not back", tables: { pieces: [pieces, ["P1", 3, null, null, null, "1 missing"]] } },
    {
      title: "words that only look like it",
      tables: { pieces: [pieces, ["P1", 2, back, null, "shorts, lostock label", "partner has slip"]] },
    },
  ],
  findings: [
    {
      title: "a word that says some are missing",
      tables: {
        pieces: [
          pieces,
          ["P1", 3, back, null, "1 missing", null],
          ["P2", 2, back, null, null, "only 1 in the bag"],
          ["P3", 2, back, null, "fehlt einer", null],
        ],
      },
      expect: [
        { at: "pieces!D2", messageId: "partial", data: { quantity: 3, back: "2026-03-04", word: "missing" } },
        { at: "pieces!D3", messageId: "partial", data: { word: "only 1" } },
        { at: "pieces!D4", messageId: "partial", data: { word: "fehlt" } },
      ],
    },
  ],
});
