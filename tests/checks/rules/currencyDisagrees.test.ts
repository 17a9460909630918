import { currencyDisagrees } from "../../../src/checks/rules/currencyDisagrees";
import { testRule } from "../testRule";

testRule(currencyDisagrees, {
  clean: [
    {
      title: "a sign that says what the row says",
      tables: {
        pieces: [
          ["Piece", "Value", "Currency"],
          ["P1", "£95", "GBP"],
          ["P2", "95 €", "euro"],
          ["P3", "£95", "£"],
        ],
      },
    },
    {
      title: "a dollar sign beside any dollar, and a crown beside any crown",
      tables: {
        pieces: [
          ["Piece", "Value", "Currency"],
          ["P1", "$95", "AUD"],
          ["P2", "95 kr", "NOK"],
          ["P3", "USD 95", "$"],
        ],
      },
    },
    {
      title: "no sign, or no currency in the row",
      tables: {
        pieces: [
          ["Piece", "Value", "Currency"],
          ["P1", 95, "EUR"],
          ["P2", "£95", null],
        ],
      },
    },
    {
      title: "a receipt of which all is kept, or an amount of it, in its own currency",
      tables: {
        receipts: [
          ["Shop", "Amount", "Kept", "Amount refunded"],
          ["Kessel", "£95", "yes", null],
          ["Kessel", "£95", "£20", 75],
          ["Odeon", 95, "20 €", "75 €"],
        ],
      },
    },
    {
      title: "a heading that names the same currency",
      tables: {
        pieces: [
          ["Piece", "Value"],
          ["P1", "£95"],
        ],
      },
      hints: { pieces: { value: { currency: "GBP", unit: null } } },
    },
  ],
  findings: [
    {
      title: "another currency than the row's",
      tables: {
        pieces: [
          ["Piece", "Value", "Currency"],
          ["P1", "£95", "EUR"],
        ],
      },
      expect: [
        {
          at: "pieces!B2",
          messageId: "otherThanRow",
          data: { given: "£95", sign: "GBP", currency: "EUR" },
          suggestions: [{ "pieces!B2": 95 }, { "pieces!B2": 95, "pieces!C2": "GBP" }],
        },
      ],
    },
    {
      title: "a dollar beside pounds",
      tables: {
        pieces: [
          ["Piece", "Value", "Currency"],
          ["P1", "$95", "GBP"],
        ],
      },
      expect: [
        {
          at: "pieces!B2",
          messageId: "otherThanRow",
          suggestions: [{ "pieces!B2": 95 }, { "pieces!B2": 95, "pieces!C2": "$" }],
        },
      ],
    },
    {
      title: "kept or refunded in another currency than was paid",
      tables: {
        receipts: [
          ["Shop", "Amount", "Kept", "Amount refunded"],
          ["Kessel", "£95", "20 €", null],
          ["Odeon", "95 €", null, "$20"],
        ],
      },
      expect: [
        { at: "receipts!C2", messageId: "otherThanPaid", data: { given: "20 €", sign: "EUR", currency: "GBP" } },
        { at: "receipts!D3", messageId: "otherThanPaid", data: { given: "$20", sign: "$", currency: "EUR" } },
      ],
    },
    {
      title: "kept in another currency than the row's",
      tables: {
        receipts: [
          ["Shop", "Amount", "Currency", "Kept"],
          ["Kessel", 95, "GBP", "20 €"],
        ],
      },
      expect: [
        {
          at: "receipts!D2",
          messageId: "otherThanRow",
          suggestions: [{ "receipts!D2": 20 }, { "receipts!D2": 20, "receipts!C2": "EUR" }],
        },
      ],
    },
    {
      title: "another currency than the heading's",
      tables: {
        pieces: [
          ["Piece", "Value"],
          ["P1", "95 €"],
        ],
      },
      hints: { pieces: { value: { currency: "GBP", unit: null } } },
      expect: [{ at: "pieces!B2", messageId: "otherThanHeading", data: { sign: "EUR", currency: "GBP" } }],
    },
  ],
});
