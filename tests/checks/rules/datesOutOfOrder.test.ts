import { datesOutOfOrder } from "../../../src/checks/rules/datesOutOfOrder";
import { day } from "../day";
import { testRule } from "../testRule";

const pieces = ["Piece", "Out", "Due", "Back", "Extended to"];

testRule(datesOutOfOrder, {
  clean: [
    {
      title: "dates in order",
      tables: { pieces: [pieces, ["P1", day("2026-03-02"), day("2026-03-09"), day("2026-03-08"), null]] },
    },
    {
      title: "out, due and back on one day",
      tables: { pieces: [pieces, ["P1", day("2026-03-02"), day("2026-03-02"), day("2026-03-02"), null]] },
    },
    {
      title: "back after due, which is late and no slip",
      tables: { pieces: [pieces, ["P1", day("2026-03-02"), day("2026-03-04"), day("2026-03-05"), null]] },
    },
    {
      title: "a time of day on the same day",
      tables: { pieces: [pieces, ["P1", day("2026-03-02") + 0.7, null, day("2026-03-02") + 0.3, null]] },
    },
    {
      title: "text dates, which another rule reports",
      tables: { pieces: [pieces, ["P1", day("2026-03-02"), "2026-02-01", "1 Feb 2026", null]] },
    },
    {
      title: "a slip in the year, which another rule reports",
      tables: { pieces: [pieces, ["P1", day("2026-03-02"), day("1926-03-09"), null, null]] },
    },
    {
      title: "blanks",
      tables: {
        pieces: [pieces, ["P1", null, null, day("2026-03-02"), null]],
        requests: [
          ["Lender", "Asked", "Answered"],
          ["Halden", null, day("2026-03-02")],
        ],
      },
    },
    {
      title: "a request answered and a receipt refunded the same day",
      tables: {
        requests: [
          ["Lender", "Asked", "Answered"],
          ["Halden", day("2026-03-02"), day("2026-03-02")],
        ],
        receipts: [
          ["Shop", "Bought", "Refunded"],
          ["Halden", day("2026-03-02"), day("2026-03-02")],
        ],
      },
    },
  ],
  findings: [
    {
      title: "back before out",
      tables: { pieces: [pieces, ["P1", day("2026-03-02"), day("2026-03-09"), day("2026-02-28"), null]] },
      expect: [{ at: "pieces!D2", messageId: "backBeforeOut", data: { back: "2026-02-28", out: "2026-03-02" } }],
    },
    {
      title: "due before out",
      tables: { pieces: [pieces, ["P1", day("2026-03-02"), day("2026-02-09"), null, null]] },
      expect: [{ at: "pieces!C2", messageId: "dueBeforeOut", data: { due: "2026-02-09", out: "2026-03-02" } }],
    },
    {
      title: "an Out after everything else, once and where the slip is",
      tables: { pieces: [pieces, ["P1", day("2026-04-02"), day("2026-03-09"), day("2026-03-08"), null]] },
      expect: [
        {
          at: "pieces!B2",
          messageId: "outAfterAll",
          data: { out: "2026-04-02", due: "2026-03-09", back: "2026-03-08" },
        },
      ],
    },
    {
      title: "an extension that brings the day forward",
      tables: { pieces: [pieces, ["P1", day("2026-03-02"), day("2026-03-09"), null, day("2026-03-06")]] },
      expect: [
        { at: "pieces!E2", messageId: "extendedBeforeDue", data: { extended: "2026-03-06", due: "2026-03-09" } },
      ],
    },
    {
      title: "a request answered before it was asked",
      tables: {
        requests: [
          ["Lender", "Asked", "Answered"],
          ["Halden", day("2026-03-02"), day("2026-02-02")],
        ],
      },
      expect: [
        { at: "requests!C2", messageId: "answeredBeforeAsked", data: { asked: "2026-03-02", answered: "2026-02-02" } },
      ],
    },
    {
      title: "a refund before the purchase",
      tables: {
        receipts: [
          ["Shop", "Bought", "Refunded"],
          ["Halden", day("2026-03-02"), day("2026-02-02")],
        ],
      },
      expect: [
        {
          at: "receipts!C2",
          messageId: "refundedBeforeBought",
          data: { bought: "2026-03-02", refunded: "2026-02-02" },
        },
      ],
    },
  ],
});
