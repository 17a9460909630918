import { sameCell } from "../../src/sheet/sameCell";

test.each([
  [1, 1, true],
  [null, null, true],
  [{ error: "#N/A" }, { error: "#N/A" }, true],
  [1, "1", false],
  [1, true, false],
  [0, null, false],
  ["#N/A", { error: "#N/A" }, false],
  [{ error: "#N/A" }, { error: "#VALUE!" }, false],
  [{ error: "#N/A" }, null, false],
])("%j against %j: same is %s", (one, other, same) => {
  expect(sameCell(one, other)).toBe(same);
  expect(sameCell(other, one)).toBe(same);
});
