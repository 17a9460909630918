import { kindWeightsTable } from "../../../src/domain/carry/kindWeightsTable";
import type { Problem } from "../../../src/domain/problem";

const problem: Problem = { reason: "error-in-cell", facts: { argument: "Weight, row 2", given: "#N/A" } };

describe("kindWeightsTable", () => {
  it("spills in the unit asked for, Weight being both parts together", () => {
    const coats = { kind: "Coat", pieces: 3, weighedGrams: 907.18474, estimatedGrams: 453.59237 };
    expect(kindWeightsTable([coats], 453.59237)).toEqual({
      headings: ["Kind", "Pieces", "Weight", "Weighed", "Estimated"],
      formats: [],
      rows: [["Coat", 3, 3, 2, 1]],
    });
  });

  it("names the pieces of no kind, and lets a problem stand in its part and in the sum", () => {
    const rows = [
      { kind: null, pieces: 1, weighedGrams: 500, estimatedGrams: problem },
      { kind: "Hat", pieces: problem, weighedGrams: problem, estimatedGrams: 300 },
    ];
    expect(kindWeightsTable(rows, 1000).rows).toEqual([
      ["(no kind)", 1, problem, 0.5, problem],
      ["Hat", problem, problem, problem, 0.3],
    ]);
  });

  it("is the heading row alone for no pieces", () => expect(kindWeightsTable([], 1000).rows).toEqual([]));
});
