import { keptNotRead } from "../../../src/checks/rules/keptNotRead";
import { testRule } from "../testRule";

const receipts = ["Shop", "Amount", "Kept"];

testRule(keptNotRead, {
  clean: [
    {
      title: "yes, no, an amount, a tick, or nothing",
      tables: {
        receipts: [
          receipts,
          ["Kessel", 95, "yes"],
          ["Kessel", 95, "No"],
          ["Kessel", 95, 40],
          ["Kessel", 95, "£40.00"],
          ["Kessel", 95, "x"],
          ["Kessel", 95, true],
          ["Kessel", 95, 0],
          ["Kessel", 95, null],
        ],
      },
    },
    {
      title: "an error, which another rule reports",
      tables: { receipts: [receipts, ["Kessel", 95, { error: "#REF!" }]] },
    },
    {
      title: "a column of that name in another table",
      tables: {
        pieces: [
          ["Piece", "Kept"],
          ["P1", "some"],
        ],
      },
    },
  ],
  findings: [
    {
      title: "words that are neither",
      tables: { receipts: [receipts, ["Kessel", 95, "the belt"], ["Kessel", 95, "tbc"]] },
      expect: [
        { at: "receipts!C2", messageId: "notRead", data: { given: "the belt" } },
        { at: "receipts!C3", messageId: "notRead", data: { given: "tbc" } },
      ],
    },
    {
      title: "an amount below 0, or with words",
      tables: { receipts: [receipts, ["Kessel", 95, -40], ["Kessel", 95, "about 40"]] },
      expect: [
        { at: "receipts!C2", messageId: "notRead", data: { given: "-40" } },
        { at: "receipts!C3", messageId: "notRead", data: { given: "about 40" } },
      ],
    },
  ],
});
