import { valueMissing } from "../../../src/checks/rules/valueMissing";
import { day } from "../day";
import { testRule } from "../testRule";

const pieces = ["Piece", "Lender", "Value", "Total value", "Out", "Back", "Settled"];
const out = day("2026-03-02");

testRule(valueMissing, {
  clean: [
    {
      title: "a value, for one piece or for the row",
      tables: {
        pieces: [pieces, ["P1", "Halden", 450, null, out, null, null], ["P2", "Halden", null, 900, out, null, null]],
      },
    },
    {
      title: "a value kept as text, which another rule reports",
      tables: {
        pieces: [
          pieces,
          ["P1", "Halden", "£450", null, out, null, null],
          ["P2", "Halden", "ask", null, out, null, null],
        ],
      },
    },
    {
      title: "a piece that is not out yet",
      tables: {
        pieces: [
          pieces,
          ["P1", "Halden", null, null, null, null, null],
          ["P2", "Halden", "tbc", null, day("2026-03-06"), null, null],
        ],
      },
    },
    {
      title: "a piece that is back or settled",
      tables: {
        pieces: [
          pieces,
          ["P1", "Halden", null, null, out, out + 1, null],
          ["P2", "Halden", null, null, out, null, "bought"],
        ],
      },
    },
    {
      title: "one's own piece, without a lender or named so",
      tables: {
        pieces: [pieces, ["P1", null, null, null, out, null, null], ["P2", "own kit", null, null, out, null, null]],
      },
    },
    {
      title: "a sheet without a value column",
      tables: {
        pieces: [
          ["Piece", "Lender", "Out"],
          ["P1", "Halden", out],
        ],
      },
    },
  ],
  findings: [
    {
      title: "a blank, a 0 and an open value of pieces that are out",
      tables: {
        pieces: [
          pieces,
          ["P1", "Halden", null, null, out, null, null],
          ["P2", "Halden", 0, null, out, null, null],
          ["P3", "Halden", "tbc", null, out, null, null],
        ],
      },
      expect: [
        { at: "pieces!C2", messageId: "none", data: { out: "2026-03-02" } },
        { at: "pieces!C3", messageId: "none" },
        { at: "pieces!C4", messageId: "open", data: { given: "tbc" } },
      ],
    },
  ],
});
