import { backInFuture } from "../../../src/checks/rules/backInFuture";
import { day } from "../day";
import { testRule } from "../testRule";

const pieces = ["Piece", "Out", "Back"];

testRule(backInFuture, {
  clean: [
    {
      title: "back today and before",
      tables: {
        pieces: [pieces, ["P1", day("2026-03-02"), day("2026-03-05")], ["P2", day("2026-03-02"), day("2026-03-03")]],
      },
    },
    { title: "not back", tables: { pieces: [pieces, ["P1", day("2026-03-02"), null]] } },
    {
      title: "a slip in the year, which another rule reports",
      tables: { pieces: [pieces, ["P1", day("2026-03-02"), day("2126-03-05")]] },
    },
    {
      title: "a Back before Out, which another rule reports",
      tables: { pieces: [pieces, ["P1", day("2026-03-20"), day("2026-03-10")]] },
    },
  ],
  findings: [
    {
      title: "a Back tomorrow",
      tables: { pieces: [pieces, ["P1", day("2026-03-02"), day("2026-03-06")]] },
      expect: [{ at: "pieces!C2", messageId: "toCome", data: { back: "2026-03-06", asOf: "2026-03-05" } }],
    },
  ],
});
