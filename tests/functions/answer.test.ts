import { fail } from "../../src/domain/fail";
import { succeed } from "../../src/domain/succeed";
import { sayProblem } from "../../src/domain/wording";
import { answer } from "../../src/functions/answer";

test("a blank result is an empty text, since a returned null shows 0", () => {
  expect(answer(succeed(null))).toBe("");
});

test("a problem is thrown with its sentence even where no host is present", () => {
  const problem = fail("nothing-to-compute", { what: "a total", fill: "value" });
  if (problem.ok) throw new Error("unreachable");
  expect(() => answer(problem)).toThrow(sayProblem(problem.problem));
});
