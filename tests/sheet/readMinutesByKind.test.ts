import { sayProblem } from "../../src/domain/wording";
import { readMinutesByKind } from "../../src/sheet/readMinutesByKind";

function minutes(cells: unknown[][] | null): unknown {
  const outcome = readMinutesByKind(cells);
  return outcome.ok ? Object.fromEntries(outcome.value) : sayProblem(outcome.problem);
}

test("kinds are read by what they mean, headings and blank rows are passed over", () => {
  expect(
    minutes([
      ["Kind", "Minutes"],
      ["Gown", 6],
      [0, 0],
      ["Shoes", "2 min"],
    ]),
  ).toEqual({ dress: 6, shoes: 2 });
  expect(minutes([["Dress", 0]])).toEqual({ dress: 0 });
  expect(minutes(null)).toEqual({});
});

test("a kind of the sheet's own is kept apart from those known", () => {
  expect(minutes([["Harness", 4]])).toEqual({ " harness": 4 });
});

test.each([
  [
    [
      ["Dress", 6],
      ["gown", 4],
    ],
    /^minutesByKind, gown: "4" cannot be used; give one figure/,
  ],
  [[["Dress", ""]], /^minutesByKind, Dress is blank/],
  [[["Dress", 0.5]], /^minutesByKind, Dress: "12:00" cannot be used/],
  [
    [
      ["Shoes", 1],
      ["Dress", "long"],
    ],
    /^minutesByKind, Dress: "long"/,
  ],
  [[["Dress", "long"]], /^minutesByKind, Dress: "long"/],
  [[["Dress", -1]], /^minutesByKind, Dress: "-1"/],
])("%j is refused in one sentence", (cells, sentence) => {
  expect(minutes(cells)).toMatch(sentence);
});

test("the same kind twice with the same figure is no contradiction", () => {
  expect(
    minutes([
      ["Dress", 6],
      ["gown", 6],
    ]),
  ).toEqual({ dress: 6 });
});
