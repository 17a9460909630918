import fc from "fast-check";
import { spreadLabels } from "../../../src/pane/today/spreadLabels";

const middles = (...labels: [string, number][]): number[] =>
  spreadLabels(
    labels.map(([word, at]) => ({ word, at })),
    300,
  ).map(({ middle }) => middle);

test("labels that are apart stand above their places", () => {
  expect(middles(["meal", 100], ["now", 160], ["wrap", 240])).toEqual([100, 160, 240]);
});

test("labels that would touch move aside, and the last stays within the picture", () => {
  expect(middles(["now", 150], ["meal", 152])).toEqual([150, 175]);
  expect(middles(["now", 297], ["wrap", 298])).toEqual([263, 288]);
  expect(middles(["wrap", 298])).toEqual([288]);
});

test("whatever their places, no two touch and none sticks out", () => {
  const place = fc.integer({ min: 66, max: 300 });
  fc.assert(
    fc.property(place, place, place, (meal, now, wrap) => {
      const spread = spreadLabels(
        [
          { word: "meal", at: meal },
          { word: "now", at: now },
          { word: "wrap", at: wrap },
        ],
        300,
      );
      const edges = spread.flatMap(({ word, middle }) => [middle - word.length * 3, middle + word.length * 3]);
      expect(edges).toEqual([...edges].sort((a, b) => a - b));
      expect(edges[0]).toBeGreaterThanOrEqual(0);
      expect(edges.at(-1)).toBeLessThanOrEqual(300);
      expect(spread.map(({ at }) => at)).toEqual([meal, now, wrap].sort((a, b) => a - b));
    }),
  );
});
