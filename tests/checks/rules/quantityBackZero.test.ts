import { quantityBackZero } from "../../../src/checks/rules/quantityBackZero";
import { day } from "../day";
import { testRule } from "../testRule";

const pieces = ["Piece", "Quantity", "Back", "Quantity back"];
const back = day("2026-03-04");

testRule(quantityBackZero, {
  clean: [
    { title: "a blank, which means all", tables: { pieces: [pieces, ["P1", 3, back, null]] } },
    { title: "0 back of a piece that is not back", tables: { pieces: [pieces, ["P1", 3, null, 0]] } },
    { title: "a number back", tables: { pieces: [pieces, ["P1", 3, back, 2]] } },
    {
      title: "a formula that counts 0",
      tables: { pieces: [pieces, ["P1", 3, back, 0]] },
      formulas: { "pieces!D2": "=COUNTIF(Z1:Z9,A2)" },
    },
  ],
  findings: [
    {
      title: "a typed 0 beside a Back date",
      tables: { pieces: [pieces, ["P1", 3, back, 0]] },
      expect: [
        {
          at: "pieces!D2",
          messageId: "zero",
          data: { back: "2026-03-04" },
          suggestions: [{ "pieces!D2": 3 }, { "pieces!C2": null, "pieces!D2": null }],
        },
      ],
    },
  ],
});
