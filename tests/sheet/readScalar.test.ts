import { sayProblem } from "../../src/domain/wording";
import { readScalar } from "../../src/sheet/readScalar";

function said(raw: unknown): unknown {
  const outcome = readScalar(raw, "out");
  return outcome.ok ? outcome.value : sayProblem(outcome.problem);
}

test("numbers, truth values and trimmed text are read, also from a range of one cell", () => {
  for (const raw of [5, " 5 ", true, [[5]], [["5"]]]) expect([5, "5", true]).toContain(said(raw));
});

test("blank is null, whichever way a host sends it", () => {
  for (const raw of [null, undefined, "", "  ", [[null]], [[""]]]) expect(said(raw)).toBeNull();
});

test("an error in the cell is named", () => {
  expect(said({ code: "#N/A" })).toBe("out holds the error #N/A; mend that cell first.");
  expect(said([[{ code: "#N/A" }]])).toBe("out holds the error #N/A; mend that cell first.");
});

test("several cells where one is wanted are no error of theirs", () => {
  for (const raw of [[[1], [2]], [[1, 2]], [1, 2], [[{ code: "#N/A" }, 1]]])
    expect(said(raw)).toBe('out: "several cells" cannot be used; give one cell.');
});
