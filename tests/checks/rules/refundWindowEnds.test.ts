import { refundWindowEnds } from "../../../src/checks/rules/refundWindowEnds";
import { day } from "../day";
import { testRule } from "../testRule";

const receipts = ["Shop", "Bought", "Amount", "Terms", "Kept", "Refunded", "Amount refunded"];
const bought = day("2026-02-20");

testRule(refundWindowEnds, {
  clean: [
    {
      title: "eight days and more left",
      tables: { receipts: [receipts, ["Kessel", bought, 95, "21 days", null, null, null]] },
    },
    {
      title: "everything kept or refunded",
      tables: {
        receipts: [
          receipts,
          ["Kessel", bought, 95, "14 days", "yes", null, null],
          ["Kessel", bought, 95, "14 days", 40, null, 55],
          ["Kessel", bought, 95, "14 days", null, day("2026-03-01"), null],
        ],
      },
    },
    {
      title: "no day, no amount, or no terms",
      tables: {
        receipts: [
          receipts,
          ["Kessel", null, 95, "14 days", null, null, null],
          ["Kessel", bought, null, "14 days", null, null, null],
          ["Kessel", bought, 95, null, null, null, null],
        ],
      },
    },
    {
      title: "cells that cannot be read, and slips in the year, which other rules report",
      tables: {
        receipts: [
          receipts,
          ["Kessel", bought, 95, "soonish", null, null, null],
          ["Kessel", bought, 95, "14 days", "the belt", null, null],
          ["Kessel", "20/02/2026", 95, "14 days", null, null, null],
          ["Kessel", day("1926-02-20"), 95, "14 days", null, null, null],
        ],
      },
    },
    {
      title: "a receipt that is still to come",
      tables: { receipts: [receipts, ["Kessel", day("2026-03-06"), 95, "2 days", null, null, null]] },
    },
  ],
  findings: [
    {
      title: "a window that ends within a week",
      tables: {
        receipts: [
          receipts,
          ["Kessel", bought, 95, "20 days", null, null, null],
          ["Odeon", bought, 95, "14 days", 40.5, null, null],
          [null, bought, 95, "13 days", null, null, 90],
        ],
      },
      expect: [
        {
          at: "receipts!D2",
          messageId: "ends",
          data: { amount: 95, shop: "Kessel", day: "2026-03-12", left: "in 7 days" },
        },
        { at: "receipts!D3", messageId: "ends", data: { amount: 54.5, day: "2026-03-06", left: "tomorrow" } },
        { at: "receipts!D4", messageId: "ends", data: { amount: 5, shop: "the shop", left: "today" } },
      ],
    },
    {
      title: "a window that has ended",
      tables: { receipts: [receipts, ["Kessel", bought, 95, "by 2026-03-04", null, null, null]] },
      expect: [{ at: "receipts!D2", messageId: "ended", data: { day: "2026-03-04", ago: "1 day" } }],
    },
    {
      title: "a refund that is dated after today",
      tables: { receipts: [receipts, ["Kessel", bought, 95, "14 days", null, day("2026-03-20"), 95]] },
      expect: [{ at: "receipts!D2", messageId: "ends", data: { left: "tomorrow" } }],
    },
  ],
});
