import { pieceNumberTwice } from "../../../src/checks/rules/pieceNumberTwice";
import { day } from "../day";
import { testRule } from "../testRule";

const pieces = ["Piece", "Job", "Out", "Back", "Settled"];

testRule(pieceNumberTwice, {
  clean: [
    {
      title: "numbers of their own",
      tables: {
        pieces: [
          pieces,
          ["P1", null, null, null, null],
          ["P2", null, null, null, null],
          ["P11", null, null, null, null],
        ],
      },
    },
    {
      title: "a piece borrowed again after it was back",
      tables: {
        pieces: [
          pieces,
          ["P1", null, day("2026-02-02"), day("2026-02-09"), null],
          ["P1", null, day("2026-03-02"), null, null],
        ],
      },
    },
    {
      title: "a piece that is back and asked for again",
      tables: {
        pieces: [pieces, ["P1", null, day("2026-02-02"), day("2026-02-09"), null], ["P1", null, null, null, null]],
      },
    },
    {
      title: "the same number in another job",
      tables: { pieces: [pieces, ["1", "Spring story", null, null, null], ["1", "Lookbook", null, null, null]] },
    },
    {
      title: "descriptions instead of numbers",
      tables: {
        pieces: [
          pieces,
          ["White shirt", null, null, null, null],
          ["White shirt", null, null, null, null],
          ["White shirt 2", null, null, null, null],
          ["White shirt 2", null, null, null, null],
        ],
      },
    },
    { title: "blanks", tables: { pieces: [pieces, [null, "A", null, null, null], [null, "A", null, null, null]] } },
  ],
  findings: [
    {
      title: "one number on two rows, also where one is a number and one is text",
      tables: {
        pieces: [
          pieces,
          ["P1", null, null, null, null],
          ["p1", null, null, null, null],
          [12, null, null, null, null],
          ["12", null, null, null, null],
        ],
      },
      expect: [
        { at: "pieces!A3", messageId: "twice", data: { piece: "p1", cell: "A2" } },
        { at: "pieces!A5", messageId: "twice", data: { piece: "12", cell: "A4" } },
      ],
    },
    {
      title: "a piece that goes out again before it is back",
      tables: {
        pieces: [
          pieces,
          ["SH-004", null, day("2026-02-02"), day("2026-03-03"), null],
          ["SH-004", null, day("2026-03-02"), null, null],
        ],
      },
      expect: [{ at: "pieces!A3", messageId: "twice", data: { cell: "A2" } }],
    },
  ],
});
