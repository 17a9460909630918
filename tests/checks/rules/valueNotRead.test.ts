import { valueNotRead } from "../../../src/checks/rules/valueNotRead";
import { testRule } from "../testRule";

testRule(valueNotRead, {
  clean: [
    {
      title: "amounts as numbers and as text",
      tables: {
        pieces: [
          ["Piece", "Value", "Deposit"],
          ["P1", 1250, "£95"],
          ["P2", "1,250", null],
        ],
      },
    },
    {
      title: "amounts not known yet",
      tables: {
        pieces: [
          ["Piece", "Value"],
          ["P1", "tbc"],
          ["P2", "?"],
        ],
      },
    },
    {
      title: "a Kept that says yes and a late fee in words",
      tables: {
        receipts: [
          ["Shop", "Kept"],
          ["Kessel", "yes"],
        ],
        lenders: [
          ["Lender", "Late fee"],
          ["Halden", "5 a day"],
        ],
      },
    },
    {
      title: "an error value, which another rule reports",
      tables: {
        pieces: [
          ["Piece", "Value"],
          ["P1", { error: "#N/A" }],
        ],
      },
    },
  ],
  findings: [
    {
      title: "words and shortened amounts",
      tables: {
        pieces: [
          ["Piece", "Value", "Rental fee"],
          ["P1", "ask Ines", null],
          ["P2", "1.2k", true],
        ],
      },
      expect: [
        { at: "pieces!B2", messageId: "noAmount", data: { given: "ask Ines" } },
        { at: "pieces!B3", messageId: "noAmount", data: { given: "1.2k" } },
        { at: "pieces!C3", messageId: "noAmount", data: { given: "TRUE" } },
      ],
    },
    {
      title: "an amount in a currency of three decimals that could be two",
      tables: {
        receipts: [
          ["Shop", "Amount"],
          ["Kessel", "KWD 1,250"],
        ],
      },
      expect: [
        {
          at: "receipts!B2",
          messageId: "twoAmounts",
          data: { first: 1250, second: 1.25 },
          suggestions: [{ "receipts!B2": 1250 }, { "receipts!B2": 1.25 }],
        },
      ],
    },
  ],
});
