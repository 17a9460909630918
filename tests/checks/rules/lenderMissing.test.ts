import { lenderMissing } from "../../../src/checks/rules/lenderMissing";
import { day } from "../day";
import { testRule } from "../testRule";

const pieces = ["Piece", "Lender", "Out", "Back", "Settled"];
const out = day("2026-03-02");

testRule(lenderMissing, {
  clean: [
    { title: "a lender", tables: { pieces: [pieces, ["P1", "Halden", out, null, null]] } },
    { title: "a piece of one's own, that went nowhere", tables: { pieces: [pieces, ["P1", null, null, null, null]] } },
    {
      title: "a piece that goes out tomorrow",
      tables: { pieces: [pieces, ["P1", "tbc", day("2026-03-06"), null, null]] },
    },
    {
      title: "a piece that is back or settled",
      tables: { pieces: [pieces, ["P1", null, out, out + 1, null], ["P2", null, out, null, "bought"]] },
    },
    {
      title: "an error value, which another rule reports",
      tables: { pieces: [pieces, ["P1", { error: "#N/A" }, out, null, null]] },
    },
  ],
  findings: [
    {
      title: "no lender, and one still open",
      tables: { pieces: [pieces, ["P1", null, out, null, null], ["P2", "?", out, null, null]] },
      expect: [
        { at: "pieces!B2", messageId: "none", data: { out: "2026-03-02" } },
        { at: "pieces!B3", messageId: "open", data: { given: "?" } },
      ],
    },
  ],
});
