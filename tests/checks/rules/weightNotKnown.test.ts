import { weightNotKnown } from "../../../src/checks/rules/weightNotKnown";
import { day } from "../day";
import { testRule } from "../testRule";

testRule(weightNotKnown, {
  clean: [
    {
      title: "weights, known kinds, and kinds that the description names",
      tables: {
        pieces: [
          ["Piece", "Description", "Kind", "Weight"],
          ["P1", "Gizmo", null, 0.4],
          ["P2", null, "Coat", null],
          ["P3", "Silk dress", null, 0],
        ],
      },
    },
    {
      title: "a sheet on which hardly anything is weighed",
      tables: {
        pieces: [
          ["Piece", "Weight"],
          ["P1", 0.4],
          ["P2", null],
        ],
      },
    },
    {
      title: "a piece that is back, and cells that other rules report",
      tables: {
        pieces: [
          ["Piece", "Kind", "Weight", "Out", "Back"],
          ["P1", "Coat", null, day("2026-03-02"), null],
          ["P2", "Coat", null, day("2026-03-02"), null],
          ["P3", "Gizmo", null, day("2026-03-02"), day("2026-03-04")],
          ["P4", "Gizmo", "heavy", day("2026-03-02"), null],
          ["P5", { error: "#N/A" }, null, day("2026-03-02"), null],
        ],
      },
    },
  ],
  findings: [
    {
      title: "a kind that weighs anything, and one that nobody knows",
      tables: {
        pieces: [
          ["Piece", "Kind", "Weight"],
          ["P1", "Accessory", null],
          ["P2", "Gizmo", 0],
          ["P3", "Coat", null],
          ["P4", "Coat", 1.2],
          ["P5", "Dress", null],
        ],
      },
      expect: [
        { at: "pieces!C2", messageId: "otherKind", data: { given: "Accessory" } },
        { at: "pieces!C3", messageId: "otherKind", data: { given: "Gizmo" } },
      ],
    },
    {
      title: "neither a weight nor a kind",
      tables: {
        pieces: [
          ["Piece", "Kind", "Weight"],
          ["P1", null, null],
          ["P2", "Coat", null],
          ["P3", null, 0.3],
        ],
      },
      expect: [{ at: "pieces!C2", messageId: "noKind", data: {} }],
    },
  ],
});
