import { readHours } from "../../src/sheet/readHours";
import { sayProblem } from "../../src/domain/wording";

test.each([
  [6, 6],
  [5.5, 5.5],
  ["6", 6],
  ["5.5", 5.5],
  [0, 0],
  [null, null],
  ["", null],
])("%j is %j hours", (raw, hours) => {
  expect(readHours(raw, "hours")).toEqual({ ok: true, value: hours });
});

test.each([[0.25], [-1], ["6:00"], ["soon"], [true]])("%j is refused, and the sentence says what to type", (raw) => {
  const read = readHours(raw, "hours");
  expect(read.ok ? "" : sayProblem(read.problem)).toMatch(
    /^hours: ".*" cannot be used; give hours as a number: type 6, not 6:00\.$/,
  );
});
