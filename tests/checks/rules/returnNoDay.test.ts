import { returnNoDay } from "../../../src/checks/rules/returnNoDay";
import { day } from "../day";
import { testRule } from "../testRule";

const pieces = "Piece,Lender,Out,Back,Quantity back,Condition back,Returned how,Tracking,Received by,Settled".split(
  ",",
);
const out = day("2026-03-02");
const back = day("2026-03-04");

testRule(returnNoDay, {
  clean: [
    {
      title: "back with its day, whatever else is noted",
      tables: { pieces: [pieces, ["P1", "Halden", out, back, null, "good", "by hand", "AB 123", "Ana", null]] },
    },
    {
      title: "still out with nothing noted, or with what is not known yet",
      tables: {
        pieces: [
          pieces,
          ["P1", "Halden", out, null, null, null, null, null, null, null],
          ["P2", "Halden", out, null, null, "tbc", null, null, "-", null],
          ["P3", "Halden", out, null, null, 0, null, null, " ", null],
        ],
      },
    },
    {
      title: "on its way, which is not back",
      tables: { pieces: [pieces, ["P1", "Halden", out, null, null, null, "courier", "AB 123", null, null]] },
    },
    {
      title: "settled, or never out, or not out yet",
      tables: {
        pieces: [
          pieces,
          ["P1", "Halden", out, null, null, "torn", null, null, null, "bought"],
          ["P2", "Halden", null, null, null, "good", null, null, null, null],
          ["P3", "Halden", day("2026-03-09"), null, null, "good", null, null, null, null],
        ],
      },
    },
    {
      title: "a quantity back, or a Back that is no date, which other rules report",
      tables: {
        pieces: [
          pieces,
          ["P1", "Halden", out, null, 1, "good", null, null, null, null],
          ["P2", "Halden", out, "yes", null, "good", null, null, null, null],
        ],
      },
    },
    {
      title: "a column of signatures, which may be those of the loan",
      tables: {
        pieces: [
          ["Piece", "Out", "Back", "Signed by"],
          ["P1", out, null, "Ana"],
        ],
      },
    },
    {
      title: "a table that keeps no Back",
      tables: {
        pieces: [
          ["Piece", "Lender", "Out", "Condition back"],
          ["P1", "Halden", out, "good"],
        ],
      },
    },
  ],
  findings: [
    {
      title: "a condition back on no day",
      tables: { pieces: [pieces, ["P1", "Halden", out, null, null, "hem torn", null, null, null, null]] },
      expect: [{ at: "pieces!D2", messageId: "noDay", data: { heading: "Condition back", noted: "hem torn" } }],
    },
    {
      title: "taken in by somebody on no day",
      tables: { pieces: [pieces, ["P1", "Halden", out, null, null, null, "by hand", null, "Ana, front desk", null]] },
      expect: [{ at: "pieces!D2", messageId: "noDay", data: { heading: "Received by", noted: "Ana, front desk" } }],
    },
  ],
});
