import { lateNotBack } from "../../../src/checks/rules/lateNotBack";
import { day } from "../day";
import { testRule } from "../testRule";

const pieces = ["Piece", "Out", "Due", "Back", "Quantity", "Quantity back", "Extended to", "Settled"];
const proofs = ["Piece", "Out", "Due", "Back", "Quantity", "Condition back", "Tracking", "Received by"];
const out = day("2026-02-20");

testRule(lateNotBack, {
  clean: [
    {
      title: "due today, which is not late",
      tables: { pieces: [pieces, ["P1", out, day("2026-03-05"), null, null, null, null, null]] },
    },
    {
      title: "back in time, and back late",
      tables: {
        pieces: [
          pieces,
          ["P1", out, day("2026-03-02"), day("2026-03-01"), null, null, null, null],
          ["P2", out, day("2026-03-02"), day("2026-03-04"), null, null, null, null],
        ],
      },
    },
    {
      title: "extended past today",
      tables: { pieces: [pieces, ["P1", out, day("2026-03-02"), null, null, null, day("2026-03-06"), null]] },
    },
    { title: "settled", tables: { pieces: [pieces, ["P1", out, day("2026-03-02"), null, null, null, null, "lost"]] } },
    {
      title: "not out yet",
      tables: { pieces: [pieces, ["P1", null, day("2026-03-02"), null, null, null, null, null]] },
    },
    { title: "no due day", tables: { pieces: [pieces, ["P1", out, null, null, null, null, null, null]] } },
    {
      title: "dates kept as text, which another rule reports",
      tables: {
        pieces: [
          pieces,
          ["P1", out, "2026-03-02", null, null, null, null, null],
          ["P2", "2026-02-20", day("2026-03-02"), null, null, null, null, null],
          ["P3", out, day("2026-03-02"), "3 Mar 2026", null, null, null, null],
        ],
      },
    },
    {
      title: "a due day before out, which another rule reports",
      tables: { pieces: [pieces, ["P1", out, day("2026-02-02"), null, null, null, null, null]] },
    },
    {
      title: "a slip in the year, which another rule reports",
      tables: { pieces: [pieces, ["P1", out, day("1926-03-09"), null, null, null, null, null]] },
    },
    {
      title: "taken in again on no day, which another rule reports",
      tables: {
        pieces: [
          proofs,
          ["P1", out, day("2026-03-02"), null, null, "good", null, null],
          ["P2", out, day("2026-03-02"), null, 1, null, "AB 123", "Ana"],
        ],
      },
    },
    {
      title: "all of several back, said by number or not at all",
      tables: {
        pieces: [
          pieces,
          ["P1", out, day("2026-03-02"), day("2026-03-02"), 3, 3, null, null],
          ["P2", out, day("2026-03-02"), day("2026-03-02"), 3, null, null, null],
        ],
      },
    },
  ],
  findings: [
    {
      title: "on its way by its number, which nobody followed up",
      tables: {
        pieces: [
          proofs,
          ["P1", out, day("2026-03-02"), null, null, null, "AB 123", null],
          ["P2", out, day("2026-03-02"), null, null, null, "tbc", null],
        ],
      },
      expect: [
        { at: "pieces!C2", messageId: "onItsWay", data: { due: "2026-03-02", late: "3 days", tracking: "AB 123" } },
        { at: "pieces!C3", messageId: "late" },
      ],
    },
    {
      title: "of several a condition back says that some came back, not that none is out",
      tables: { pieces: [proofs, ["P1", out, day("2026-03-02"), null, 3, "good", null, null]] },
      expect: [{ at: "pieces!C2", messageId: "late" }],
    },
    {
      title: "due yesterday and earlier",
      tables: {
        pieces: [
          pieces,
          ["P1", out, day("2026-03-04"), null, null, null, null, null],
          ["P2", out, day("2026-02-23"), null, 2, null, null, null],
        ],
      },
      expect: [
        { at: "pieces!C2", messageId: "late", data: { due: "2026-03-04", late: "1 day" } },
        { at: "pieces!C3", messageId: "late", data: { due: "2026-02-23", late: "10 days" } },
      ],
    },
    {
      title: "past the extension, at its cell",
      tables: { pieces: [pieces, ["P1", out, day("2026-02-25"), null, null, null, day("2026-03-03"), null]] },
      expect: [{ at: "pieces!G2", messageId: "late", data: { due: "2026-03-03", late: "2 days" } }],
    },
    {
      title: "a part still out",
      tables: { pieces: [pieces, ["P1", out, day("2026-03-03"), day("2026-03-03"), 5, 3, null, null]] },
      expect: [
        { at: "pieces!C2", messageId: "partLate", data: { due: "2026-03-03", late: "2 days", held: 2, quantity: 5 } },
      ],
    },
    {
      title: "a Back that is still to come",
      tables: { pieces: [pieces, ["P1", out, day("2026-03-03"), day("2026-03-08"), null, null, null, null]] },
      expect: [{ at: "pieces!C2", messageId: "late" }],
    },
  ],
});
