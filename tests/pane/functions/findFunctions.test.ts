import { findFunctions } from "../../../src/pane/functions/findFunctions";
import { otherQuestions } from "../../../src/pane/functions/otherQuestions";
import { askedQuestions } from "./askedQuestions";
import { functionDocs } from "../../../src/pane/functions/functionDocs";

const found = (question: string) => findFunctions(functionDocs, question).map(({ id }) => id);

test.each(functionDocs.map(({ answers, id }) => [answers, id] as const))("%s finds %s first", (answers, id) => {
  expect(found(answers)[0]).toBe(id);
});

test.each(functionDocs.map(({ id }) => [id] as const))("%s is found by its name, in any case and with =TACK.", (id) => {
  expect(found(id)[0]).toBe(id);
  expect(found(`=tack.${id.toLowerCase()}`)[0]).toBe(id);
});

test.each(askedQuestions)("%s finds %s first", (question, id) => {
  expect(found(question)[0]).toBe(id);
});

test("every function is asked for in other words too, and nothing else is", () => {
  expect(Object.keys(otherQuestions).sort()).toEqual(functionDocs.map(({ id }) => id).sort());
  expect(functionDocs.map(({ id }) => id).filter((id) => askedQuestions.every((asked) => asked[1] !== id))).toEqual([]);
});

test.each([
  ["when is it due?", "DUE"],
  ["what is late?", "LATEROWS"],
  ["which pieces are overdue", "LATEROWS"],
  ["when must I send it", "SENDBY"],
  ["late fee", "LATEFEE"],
  ["how heavy is it all", "CARRIED"],
  ["lunch", "MEALBY"],
  ["insurance", "COVERGAP"],
  ["how many bags", "BAGS"],
  ["what is the next look", "NEXTLOOK"],
  ["Wie?", undefined],
] as const)("%s finds %s among the first three", (question, id) => {
  if (id === undefined) expect(found(question)).toEqual([]);
  else expect(found(question).slice(0, 3)).toContain(id);
});

test("half a word already finds", () => {
  expect(found("cour")).toContain("PARCELWEIGHT");
});

test("nothing asked gives every function", () => {
  expect(found(" ")).toEqual(functionDocs.map(({ id }) => id));
});
