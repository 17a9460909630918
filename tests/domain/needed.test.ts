import { fail } from "../../src/domain/fail";
import { needed } from "../../src/domain/needed";
import { succeed } from "../../src/domain/succeed";

test("a value passes, also one that is nothing much", () => {
  expect(needed(succeed(5), "asOf", "a day")).toEqual({ ok: true, value: 5 });
  expect(needed(succeed(0), "asOf", "a day")).toEqual({ ok: true, value: 0 });
  expect(needed(succeed(false), "asOf", "a day")).toEqual({ ok: true, value: false });
});

test("blank is a problem that says what to give", () => {
  expect(needed(succeed(null), "asOf", "a day")).toEqual(
    fail("argument-missing", { argument: "asOf", expected: "a day" }),
  );
});

test("a problem stays the problem it is", () => {
  const problem = fail("date-not-understood", { argument: "asOf", given: "soon" });
  expect(needed(problem, "asOf", "a day")).toBe(problem);
});
