import { sayProblem } from "../../src/domain/wording";
import { readWholeNumber } from "../../src/sheet/readWholeNumber";

test.each([
  [1, 1],
  [100, 100],
  ["50", 50],
  [null, null],
  ["", null],
])("%j is %j", (raw, value) => {
  expect(readWholeNumber(raw, "runs", 1, 100)).toEqual({ ok: true, value });
});

test.each([[0], [101], [2.5], [-1], ["many"], [true], [Infinity]])("%j is refused with its bounds", (raw) => {
  const read = readWholeNumber(raw, "runs", 1, 100);
  expect(read.ok ? "" : sayProblem(read.problem)).toMatch(
    /^runs: ".*" cannot be used; give a whole number from 1 to 100\.$/,
  );
});
