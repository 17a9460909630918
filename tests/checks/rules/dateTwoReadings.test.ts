import { dateTwoReadings } from "../../../src/checks/rules/dateTwoReadings";
import { day } from "../day";
import { testRule } from "../testRule";

testRule(dateTwoReadings, {
  clean: [
    {
      title: "a real date",
      tables: {
        pieces: [
          ["Piece", "Due"],
          ["P1", day("2026-04-03")],
        ],
      },
    },
    {
      title: "figures that can be one day only",
      tables: {
        pieces: [
          ["Piece", "Due"],
          ["P1", "25/12/2026"],
          ["P2", "4/4/26"],
        ],
      },
    },
    {
      title: "a slip number that looks like a date",
      tables: {
        pieces: [
          ["Piece", "Slip"],
          ["P1", "03/04/26"],
        ],
      },
    },
  ],
  findings: [
    {
      title: "day and month that can be exchanged",
      tables: {
        pieces: [
          ["Piece", "Due"],
          ["P1", "03/04/26"],
        ],
      },
      expect: [
        {
          at: "pieces!B2",
          messageId: "twoDays",
          data: { given: "03/04/26", first: "2026-04-03", second: "2026-03-04" },
          suggestions: [{ "pieces!B2": day("2026-04-03") }, { "pieces!B2": day("2026-03-04") }],
        },
      ],
    },
    {
      title: "a formula's text, without suggestions that would lose the formula",
      tables: {
        pieces: [
          ["Piece", "Due"],
          ["P1", "3.4.2026"],
        ],
      },
      formulas: { "pieces!B2": "=C2" },
      expect: [{ at: "pieces!B2", messageId: "twoDays" }],
    },
  ],
});
