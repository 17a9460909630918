import { returnNotProved } from "../../../src/checks/rules/returnNotProved";
import { day } from "../day";
import { testRule } from "../testRule";

const pieces = ["Piece", "Lender", "Out", "Back", "Returned how", "Tracking", "Received by", "Settled"];
const out = day("2026-03-02");
const back = day("2026-03-04");

testRule(returnNotProved, {
  clean: [
    {
      title: "any one of the three, but for a parcel with no number",
      tables: {
        pieces: [
          pieces,
          ["P1", "Halden", out, back, "by hand", null, null, null],
          ["P2", "Halden", out, back, null, "Norrpost AB 123", null, null],
          ["P3", "Halden", out, back, null, null, "Ana, front desk", null],
          ["P4", "Halden", out, back, "courier", "AB 123", null, null],
          ["P5", "Halden", out, back, "courier", null, "signed Ana", null],
        ],
      },
    },
    {
      title: "a table that keeps no such columns",
      tables: {
        pieces: [
          ["Piece", "Lender", "Out", "Back"],
          ["P1", "Halden", out, back],
        ],
      },
    },
    {
      title: "a number in a table that keeps no word of how it went",
      tables: {
        pieces: [
          ["Piece", "Out", "Back", "Tracking"],
          ["P1", out, back, "AB 123"],
        ],
      },
    },
    {
      title: "a table that keeps only how it went, and says so",
      tables: {
        pieces: [
          ["Piece", "Out", "Back", "Returned how"],
          ["P1", out, back, "courier"],
        ],
      },
    },
    {
      title: "a piece that is not back, or settled, or one's own",
      tables: {
        pieces: [
          pieces,
          ["P1", "Halden", out, null, null, null, null, null],
          ["P2", "Halden", out, day("2026-03-09"), null, null, null, null],
          ["P3", "Halden", out, back, null, null, null, "bought"],
          ["P4", "own", out, back, null, null, null, null],
        ],
      },
    },
  ],
  findings: [
    {
      title: "a piece that is back with nothing to show for it",
      tables: {
        pieces: [pieces, ["P1", "Halden", out, back, null, 0, " ", null]],
      },
      expect: [{ at: "pieces!E2", messageId: "noProof", data: { back: "2026-03-04" } }],
    },
    {
      title: "a number, and nobody knows whose",
      tables: { pieces: [pieces, ["P1", "Halden", out, back, null, "AB 123", null, null]] },
      expect: [{ at: "pieces!E2", messageId: "noCarrier", data: { back: "2026-03-04", tracking: "AB 123" } }],
    },
    {
      title: "a parcel with no number and no name",
      tables: { pieces: [pieces, ["P1", "Halden", out, back, "Kurier", null, null, null]] },
      expect: [{ at: "pieces!F2", messageId: "noNumber", data: { how: "Kurier" } }],
    },
  ],
});
