import { refundTooLarge } from "../../../src/checks/rules/refundTooLarge";
import { testRule } from "../testRule";

const receipts = ["Shop", "Amount", "Amount refunded"];

testRule(refundTooLarge, {
  clean: [
    {
      title: "a part, all or nothing refunded",
      tables: { receipts: [receipts, ["Kessel", 95, 40], ["Kessel", 95, 95], ["Kessel", 95, null]] },
    },
    {
      title: "an amount that is missing or text, which other rules report",
      tables: { receipts: [receipts, ["Kessel", null, 40], ["Kessel", "£95", 400]] },
    },
  ],
  findings: [
    {
      title: "more refunded than paid",
      tables: { receipts: [receipts, ["Kessel", 95, 95.01]] },
      expect: [{ at: "receipts!C2", messageId: "tooLarge", data: { refunded: 95.01, amount: 95 } }],
    },
  ],
});
