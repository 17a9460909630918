import { sayProblem } from "../../src/domain/wording";
import { readChoice } from "../../src/sheet/readChoice";
import { reads } from "./reads";

const COUNTING = ["calendar", "working"] as const;

test.each([
  ["calendar", "calendar"],
  [" Working ", "working"],
  [null, null],
  ["", null],
])("%j is %j", (raw, choice) => expect(reads(readChoice(raw, "counting", COUNTING))).toBe(choice));

test("another word is refused with the words there are", () => {
  const outcome = readChoice("weekly", "counting", COUNTING);
  if (outcome.ok) throw new Error("expected a problem");
  expect(sayProblem(outcome.problem)).toBe('counting: "weekly" cannot be used; give "calendar" or "working".');
});
