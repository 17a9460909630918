import { settledAndBack } from "../../../src/checks/rules/settledAndBack";
import { day } from "../day";
import { testRule } from "../testRule";

const pieces = ["Piece", "Quantity", "Back", "Settled"];
const back = day("2026-03-04");

testRule(settledAndBack, {
  clean: [
    {
      title: "back or settled, not both",
      tables: { pieces: [pieces, ["P1", 1, back, null], ["P2", 1, null, "lost"]] },
    },
    { title: "a Settled that says no", tables: { pieces: [pieces, ["P1", 1, back, "no"], ["P2", 1, back, 0]] } },
    {
      title: "several pieces, of which some may be back and the rest settled",
      tables: { pieces: [pieces, ["P1", 3, back, "1 lost"]] },
    },
  ],
  findings: [
    {
      title: "one piece both settled and back",
      tables: { pieces: [pieces, ["P1", 1, back, "lost"], ["P2", null, back, day("2026-03-05")]] },
      expect: [
        { at: "pieces!D2", messageId: "both", data: { settled: "lost", back: "2026-03-04" } },
        { at: "pieces!D3", messageId: "both", data: { settled: "2026-03-05" } },
      ],
    },
  ],
});
