import { currencyMissing } from "../../../src/checks/rules/currencyMissing";
import { testRule } from "../testRule";

const pieces = ["Piece", "Value", "Currency"];

testRule(currencyMissing, {
  clean: [
    {
      title: "a currency on every row with an amount",
      tables: { pieces: [pieces, ["P1", 95, "GBP"], ["P2", null, null], ["P3", 0, null]] },
    },
    { title: "no currency at all", tables: { pieces: [pieces, ["P1", 95, null], ["P2", 450, null]] } },
    { title: "an amount with its own sign", tables: { pieces: [pieces, ["P1", 95, "GBP"], ["P2", "£450", null]] } },
  ],
  findings: [
    {
      title: "a row that names none, with the only currency there is as suggestion",
      tables: { pieces: [pieces, ["P1", 95, "GBP"], ["P2", 450, null]] },
      expect: [{ at: "pieces!C3", messageId: "missing", data: { amount: 450 }, suggestions: [{ "pieces!C3": "GBP" }] }],
    },
    {
      title: "a row that names none among several currencies",
      tables: { pieces: [pieces, ["P1", 95, "GBP"], ["P2", 450, "EUR"], ["P3", "450", null]] },
      expect: [{ at: "pieces!C4", messageId: "missing", data: { amount: 450 } }],
    },
  ],
});
