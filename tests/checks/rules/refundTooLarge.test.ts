import { refundTooLarge } from "../../../src/checks/rules/refundTooLarge";
import { testRule } from "../testRule";

const receipts = ["Shop", "Amount", "Amount refunded", "Kept"];

testRule(refundTooLarge, {
  clean: [
    {
      title: "a part, all or nothing refunded",
      tables: {
        receipts: [receipts, ["Kessel", 95, 40, null], ["Kessel", 95, 95, null], ["Kessel", 95, null, null]],
      },
    },
    {
      title: "an amount that is missing or text, which other rules report",
      tables: { receipts: [receipts, ["Kessel", null, 40, null], ["Kessel", "£95", 400, null]] },
    },
    {
      title: "kept and refunded that come to the amount, also in cents that drift",
      tables: {
        receipts: [receipts, ["Kessel", 0.3, 0.1, 0.2], ["Kessel", 95, 40, "yes"], ["Kessel", 95, null, 100]],
      },
    },
    {
      title: "something kept that cannot be read, which another rule reports",
      tables: { receipts: [receipts, ["Kessel", 95, 90, "the belt"]] },
    },
  ],
  findings: [
    {
      title: "more refunded than paid",
      tables: { receipts: [receipts, ["Kessel", 95, 95.01, 20]] },
      expect: [{ at: "receipts!C2", messageId: "tooLarge", data: { refunded: 95.01, amount: 95 } }],
    },
    {
      title: "more refunded and kept than paid",
      tables: { receipts: [receipts, ["Kessel", 95, 60, 40], ["Kessel", 95, 60, "£40"]] },
      expect: [
        { at: "receipts!C2", messageId: "withKept", data: { refunded: 60, kept: 40, amount: 95 } },
        { at: "receipts!C3", messageId: "withKept" },
      ],
    },
  ],
});
