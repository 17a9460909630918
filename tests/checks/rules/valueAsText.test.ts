import { valueAsText } from "../../../src/checks/rules/valueAsText";
import { testRule } from "../testRule";

testRule(valueAsText, {
  clean: [
    {
      title: "numbers and blanks",
      tables: {
        pieces: [
          ["Piece", "Value", "Currency"],
          ["P1", 1250, "GBP"],
          ["P2", null, "GBP"],
        ],
      },
    },
    {
      title: "text that is no amount, which another rule reports",
      tables: {
        pieces: [
          ["Piece", "Value"],
          ["P1", "ask"],
          ["P2", "1.2k"],
        ],
      },
    },
    {
      title: "an amount in another currency than its row, which another rule reports",
      tables: {
        pieces: [
          ["Piece", "Value", "Currency"],
          ["P1", "£95", "EUR"],
        ],
      },
    },
    {
      title: "an amount below 0, which another rule reports",
      tables: {
        pieces: [
          ["Piece", "Value"],
          ["P1", "(95.00)"],
        ],
      },
    },
    {
      title: "a value not known yet",
      tables: {
        pieces: [
          ["Piece", "Value"],
          ["P1", "tbc"],
        ],
      },
    },
    {
      title: "a number kept as text where no money is",
      tables: {
        pieces: [
          ["Piece", "Slip"],
          ["P1", "1250"],
        ],
      },
    },
  ],
  findings: [
    {
      title: "digits kept as text",
      tables: {
        pieces: [
          ["Piece", "Value"],
          ["P1", "1250"],
          ["P2", "1,250.50"],
          ["P3", "1.250,50"],
        ],
      },
      expect: [
        { at: "pieces!B2", messageId: "typed", data: { given: "1250", amount: 1250 }, fix: { "pieces!B2": 1250 } },
        { at: "pieces!B3", messageId: "typed", fix: { "pieces!B3": 1250.5 } },
        { at: "pieces!B4", messageId: "typed", fix: { "pieces!B4": 1250.5 } },
      ],
    },
    {
      title: "a sign that the Currency column says too, and one that it takes",
      tables: {
        pieces: [
          ["Piece", "Value", "Currency"],
          ["P1", "£1,250.00", "GBP"],
          ["P2", "1.250,00 €", null],
          ["P3", "$95", "AUD"],
        ],
      },
      expect: [
        { at: "pieces!B2", messageId: "typed", fix: { "pieces!B2": 1250 } },
        { at: "pieces!B3", messageId: "typed", fix: { "pieces!B3": 1250, "pieces!C3": "EUR" } },
        { at: "pieces!B4", messageId: "typed", fix: { "pieces!B4": 95 } },
      ],
    },
    {
      title: "a sign that would be lost, as a suggestion",
      tables: {
        pieces: [
          ["Piece", "Value"],
          ["P1", "£1,250.00"],
        ],
        receipts: [
          ["Shop", "Amount"],
          ["Kessel", "CHF 95.–"],
        ],
      },
      expect: [
        {
          at: "pieces!B2",
          messageId: "losesCurrency",
          data: { amount: 1250, currency: "GBP" },
          suggestions: [{ "pieces!B2": 1250 }],
        },
        {
          at: "receipts!B2",
          messageId: "losesCurrency",
          data: { currency: "CHF" },
          suggestions: [{ "receipts!B2": 95 }],
        },
      ],
    },
    {
      title: "a formula that gives text",
      tables: {
        pieces: [
          ["Piece", "Value"],
          ["P1", "1250"],
        ],
      },
      formulas: { "pieces!B2": '=Z9&""' },
      expect: [{ at: "pieces!B2", messageId: "fromFormula", data: { amount: 1250 } }],
    },
  ],
});
