import { numberNegative } from "../../../src/checks/rules/numberNegative";
import { testRule } from "../testRule";

testRule(numberNegative, {
  clean: [
    {
      title: "numbers from 0 up, and blanks",
      tables: {
        pieces: [
          ["Piece", "Quantity", "Value", "Weight"],
          ["P1", 0, 0, 0],
          ["P2", 2, "£95", "1.2 kg"],
          ["P3", null, null, null],
        ],
      },
    },
    {
      title: "text with a dash or brackets that is no number below 0",
      tables: {
        pieces: [
          ["Piece", "Value", "Weight"],
          ["P1", "-", "800 g (boxed)"],
          ["P2", "CHF 95.–", "1-2 kg"],
        ],
      },
    },
    {
      title: "a receipt below 0, which may be money given back",
      tables: {
        receipts: [
          ["Shop", "Amount"],
          ["Kessel", -95],
        ],
      },
    },
  ],
  findings: [
    {
      title: "numbers below 0, also as text and in brackets",
      tables: {
        pieces: [
          ["Piece", "Quantity", "Value", "Weight"],
          ["P1", -2, "(95.00)", -1.2],
          ["P2", "-3", "-£450", null],
        ],
      },
      expect: [
        { at: "pieces!B2", messageId: "negative", data: { given: -2, positive: 2 }, suggestions: [{ "pieces!B2": 2 }] },
        {
          at: "pieces!C2",
          messageId: "negative",
          data: { given: "(95.00)", positive: 95 },
          suggestions: [{ "pieces!C2": 95 }],
        },
        { at: "pieces!D2", messageId: "negative", suggestions: [{ "pieces!D2": 1.2 }] },
        { at: "pieces!B3", messageId: "negative", suggestions: [{ "pieces!B3": 3 }] },
        { at: "pieces!C3", messageId: "negative", suggestions: [{ "pieces!C3": 450 }] },
      ],
    },
  ],
});
