import { sayProblem } from "../../src/domain/wording";
import { readFixed } from "../../src/sheet/readFixed";

test.each([
  ["First", "first"],
  ["LAST", "last"],
  ["dernière", "last"],
  ["último", "last"],
  [3, 3],
  ["3rd", 3],
  ["", null],
  [0, null],
  [null, null],
])("%j is %j", (raw, fixed) => {
  expect(readFixed(raw, "Fixed of look 2")).toEqual({ ok: true, value: fixed });
});

test.each([["soon"], [-1], [2.5], [true]])("%j is refused with what would be right", (raw) => {
  const outcome = readFixed(raw, "Fixed of look 2");
  expect(outcome.ok ? "" : sayProblem(outcome.problem)).toMatch(
    /^Fixed of look 2: ".+" cannot be used; give first, last/,
  );
});
