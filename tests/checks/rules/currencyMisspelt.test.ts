import { currencyMisspelt } from "../../../src/checks/rules/currencyMisspelt";
import { testRule } from "../testRule";

const pieces = ["Piece", "Value", "Currency"];

testRule(currencyMisspelt, {
  clean: [
    {
      title: "known codes, signs and names, also one slip apart",
      tables: {
        pieces: [pieces, ["P1", 95, "GBP"], ["P2", 95, "£"], ["P3", 95, "euros"], ["P4", 95, "SEK"], ["P5", 95, "DKK"]],
      },
    },
    { title: "a rare currency like no other", tables: { pieces: [pieces, ["P1", 95, "GBP"], ["P2", 95, "XOF"]] } },
    { title: "an unknown one alone", tables: { pieces: [pieces, ["P1", 95, "GPB"]] } },
  ],
  findings: [
    {
      title: "letters turned round, in every row that has them",
      tables: { pieces: [pieces, ["P1", 95, "GBP"], ["P2", 95, "GPB"], ["P3", 95, "GPB"]] },
      expect: [
        {
          at: "pieces!C3",
          messageId: "misspelt",
          data: { given: "GPB", currency: "GBP" },
          suggestions: [{ "pieces!C3": "GBP", "pieces!C4": "GBP" }],
        },
      ],
    },
  ],
});
