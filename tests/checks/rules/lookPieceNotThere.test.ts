import { lookPieceNotThere } from "../../../src/checks/rules/lookPieceNotThere";
import { day } from "../day";
import { testRule } from "../testRule";

const pieces = ["Piece", "Lender", "Look", "Out", "Due", "Back", "Shoot", "Settled", "Extended to"];
const shoot = day("2026-03-10");
const looks = [
  ["Look", "Date"],
  [1, shoot],
  [2, null],
  [3, day("2026-03-02")],
] as const;

testRule(lookPieceNotThere, {
  clean: [
    {
      title: "a piece out before the day and due after it",
      tables: {
        pieces: [pieces, ["P1", "Halden", 1, day("2026-03-09"), day("2026-03-12"), null, null, null, null]],
        looks,
      },
    },
    {
      title: "a piece of which only some are back by the day",
      tables: {
        pieces: [
          ["Piece", "Look", "Out", "Back", "Quantity", "Quantity back"],
          ["P1", 1, day("2026-03-02"), day("2026-03-05"), 3, 1],
        ],
        looks,
      },
    },
    {
      title: "a piece that goes out on the day and is due on it",
      tables: { pieces: [pieces, ["P1", "Halden", 1, shoot, shoot, null, null, null, null]], looks },
    },
    {
      title: "a piece back the day after",
      tables: {
        pieces: [
          pieces,
          ["P1", "Halden", 3, day("2026-03-01"), day("2026-03-04"), day("2026-03-03"), null, null, null],
        ],
        looks,
      },
    },
    {
      title: "a day to come and no Out date yet",
      tables: { pieces: [pieces, ["P1", "Halden", 1, null, null, null, null, null, null]], looks },
    },
    {
      title: "a look without a day, and one that is not listed",
      tables: {
        pieces: [
          pieces,
          ["P1", "Halden", 2, day("2026-04-01"), null, null, null, null, null],
          ["P2", "Halden", 9, day("2026-04-01"), null, null, null, null, null],
        ],
        looks,
      },
    },
    {
      title: "a due day extended past the shoot",
      tables: {
        pieces: [
          pieces,
          ["P1", "Halden", 1, day("2026-03-02"), day("2026-03-09"), null, null, null, day("2026-03-12")],
        ],
        looks,
      },
    },
    {
      title: "a day that is past: what was due before it is late or back, and reported so",
      tables: {
        pieces: [pieces, ["P1", "Halden", 3, day("2026-02-20"), day("2026-03-01"), null, null, null, null]],
        looks,
      },
    },
    {
      title: "one's own piece without an Out date",
      tables: {
        pieces: [
          pieces,
          ["P1", null, 3, null, null, null, null, null, null],
          ["P2", "Mine", 3, null, null, null, null, null, null],
        ],
        looks,
      },
    },
    {
      title: "a piece that was bought, or whose dates are kept as text",
      tables: {
        pieces: [
          pieces,
          ["P1", "Halden", 1, day("2026-04-01"), null, null, null, "bought", null],
          ["P2", "Halden", 1, "1 Apr 2026", null, null, null, null, null],
        ],
        looks,
      },
    },
    {
      title: "days that number their looks anew, with the piece's own day",
      tables: {
        pieces: [pieces, ["P1", "Halden", 1, day("2026-03-10"), null, null, day("2026-03-11"), null, null]],
        looks: [
          ["Look", "Date"],
          [1, day("2026-03-09")],
          [1, day("2026-03-11")],
        ],
      },
    },
  ],
  findings: [
    {
      title: "a piece that goes out after the day",
      tables: { pieces: [pieces, ["P1", "Halden", "1, 3", day("2026-03-11"), null, null, null, null, null]], looks },
      expect: [{ at: "pieces!D2", messageId: "notYetOut", data: { look: "1", day: "2026-03-10", out: "2026-03-11" } }],
    },
    {
      title: "a piece that is back on the day itself",
      tables: {
        pieces: [pieces, ["P1", "Halden", 3, day("2026-02-20"), null, day("2026-03-02"), null, null, null]],
        looks,
      },
      expect: [
        { at: "pieces!F2", messageId: "alreadyBack", data: { look: "3", day: "2026-03-02", back: "2026-03-02" } },
      ],
    },
    {
      title: "a piece due back before the day",
      tables: {
        pieces: [pieces, ["P1", "Halden", 1, day("2026-03-02"), day("2026-03-09"), null, null, null, null]],
        looks,
      },
      expect: [{ at: "pieces!E2", messageId: "dueBefore", data: { due: "2026-03-09", day: "2026-03-10" } }],
    },
    {
      title: "the piece's own shoot day where the look has none",
      tables: {
        pieces: [pieces, ["P1", "Halden", 2, day("2026-03-12"), null, null, day("2026-03-11"), null, null]],
        looks,
      },
      expect: [{ at: "pieces!D2", messageId: "notYetOut", data: { day: "2026-03-11" } }],
    },
    {
      title: "a borrowed piece in a look that was shot, without an Out date",
      tables: { pieces: [pieces, ["P1", "Halden", 3, null, null, null, null, null, null]], looks },
      expect: [{ at: "pieces!D2", messageId: "neverOut", data: { look: "3", day: "2026-03-02" } }],
    },
  ],
});
