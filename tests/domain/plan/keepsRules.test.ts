import { keepsRules } from "../../../src/domain/plan/keepsRules";

const rules = { count: 3, before: [[], [0], []], placeOf: [-1, -1, 0] };

test.each([
  ["what must come before stands before, what has a place stands there", [2, 0, 1], true],
  ["something stands before what must come before it", [2, 1, 0], false],
  ["something stands elsewhere than in its place", [0, 1, 2], false],
])("%s", (_, order, keeps) => {
  expect(keepsRules(rules, order)).toBe(keeps);
});
