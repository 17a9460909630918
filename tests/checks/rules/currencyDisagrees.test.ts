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
