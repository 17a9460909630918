import { quantityBackTooMany } from "../../../src/checks/rules/quantityBackTooMany";
import { testRule } from "../testRule";

const pieces = ["Piece", "Quantity", "Quantity back"];

testRule(quantityBackTooMany, {
  clean: [
    {
      title: "as many back as went out, or fewer",
      tables: { pieces: [pieces, ["P1", 3, 3], ["P2", 3, 2], ["P3", 1, 0]] },
    },
    {
      title: "one back of a blank quantity, which is one",
      tables: { pieces: [pieces, ["P1", null, 1], ["P2", 0, 1]] },
    },
    {
      title: "a quantity that cannot be read, which another rule reports",
      tables: { pieces: [pieces, ["P1", "a few", 9], ["P2", 2, "all"]] },
    },
  ],
  findings: [
    {
      title: "more back than out",
      tables: { pieces: [pieces, ["P1", 2, 3], ["P2", null, 2], ["P3", "2 pcs", "3 pcs"]] },
      expect: [
        { at: "pieces!C2", messageId: "tooMany", data: { back: 3, quantity: 2 } },
        { at: "pieces!C3", messageId: "tooMany", data: { back: 2, quantity: 1 } },
        { at: "pieces!C4", messageId: "tooMany", data: { back: 3, quantity: 2 } },
      ],
    },
  ],
});
