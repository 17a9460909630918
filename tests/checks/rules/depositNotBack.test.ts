import { depositNotBack } from "../../../src/checks/rules/depositNotBack";
import { day } from "../day";
import { testRule } from "../testRule";

const pieces = ["Piece", "Deposit", "Out", "Back", "Quantity", "Quantity back", "Settled", "Note"];
const [out, back] = [day("2026-02-20"), day("2026-03-02")];

testRule(depositNotBack, {
  clean: [
    {
      title: "a piece that is still out, in whole or in part, or comes back later",
      tables: {
        pieces: [
          pieces,
          ["P1", 100, out, null, null, null, null, null],
          ["P2", 100, out, back, 3, 2, null, null],
          ["P3", 100, out, day("2026-03-06"), null, null, null, null],
        ],
      },
    },
    {
      title: "no deposit",
      tables: {
        pieces: [pieces, ["P1", null, out, back, null, null, null, null], ["P2", 0, out, back, null, null, null, null]],
      },
    },
    {
      title: "a note that the deposit came back, in several languages",
      tables: {
        pieces: [
          pieces,
          ["P1", 100, out, back, null, null, null, "Deposit refunded 3 Mar"],
          ["P2", 100, out, back, null, null, null, "got deposit"],
          ["P3", 100, out, back, null, null, null, "caution rendue"],
          ["P4", 100, out, back, null, null, null, "Kaution zurück"],
        ],
      },
    },
    { title: "settled", tables: { pieces: [pieces, ["P1", 100, out, back, null, null, "bought", null]] } },
    {
      title: "a return more than a month ago",
      tables: { pieces: [pieces, ["P1", 100, day("2026-01-02"), day("2026-02-01"), null, null, null, null]] },
    },
  ],
  findings: [
    {
      title: "a deposit in the row of a piece that is back",
      tables: { pieces: [pieces, ["P1", 100, out, back, 2, null, null, "scuffed heel"]] },
      expect: [{ at: "pieces!B2", messageId: "held", data: { deposit: 100, back: "2026-03-02" } }],
    },
  ],
});
