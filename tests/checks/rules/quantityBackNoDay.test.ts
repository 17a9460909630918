import { quantityBackNoDay } from "../../../src/checks/rules/quantityBackNoDay";
import { day } from "../day";
import { testRule } from "../testRule";

const pieces = ["Piece", "Quantity", "Back", "Quantity back"];

testRule(quantityBackNoDay, {
  clean: [
    { title: "both filled", tables: { pieces: [pieces, ["P1", 3, day("2026-03-04"), 3]] } },
    { title: "neither filled, and 0 back", tables: { pieces: [pieces, ["P1", 3, null, null], ["P2", 3, null, 0]] } },
    { title: "a Back that is no date, which another rule reports", tables: { pieces: [pieces, ["P1", 3, "yes", 3]] } },
  ],
  findings: [
    {
      title: "pieces counted back on no day",
      tables: { pieces: [pieces, ["P1", 3, null, 2]] },
      expect: [{ at: "pieces!C2", messageId: "noDay", data: { back: 2 } }],
    },
  ],
});
