import { completeMetadata } from "../../src/build/completeMetadata.mjs";

const entry = (id: string, more: Record<string, unknown> = {}): Record<string, unknown> => ({
  id,
  name: id,
  description: "Counts the days.\n\nMore that argument help has no room for.",
  parameters: [{ name: "out", type: "any", description: "The day it\n went out." }],
  result: { dimensionality: "matrix" },
  ...more,
});

test("errors and formatted numbers inside a range reach the functions", () => {
  expect(completeMetadata({ functions: [entry("DAYS")] })).toMatchObject({
    allowCustomDataForDataTypeAny: true,
    allowErrorForDataTypeAny: true,
  });
});

test("a description is its first paragraph, and each text one line", () => {
  const [days] = completeMetadata({ functions: [entry("DAYS")] }).functions;
  expect(days!.description).toBe("Counts the days.");
  expect(days!.parameters[0]!.description).toBe("The day it went out.");
});

test("a result keeps its shape and is of any type", () => {
  const { functions } = completeMetadata({ functions: [entry("DAYS"), entry("ONE", { result: {} })] });
  expect(functions.map(({ result }) => result)).toEqual([{ type: "any", dimensionality: "matrix" }, { type: "any" }]);
});

test("what the generator wrote may come as text", () => {
  expect(completeMetadata(JSON.stringify({ functions: [entry("DAYS")] })).functions).toHaveLength(1);
});

test.each([
  [[entry("DAYS"), entry("days")], "DAYS is declared twice"],
  [[entry("DA")], "DA is no id"],
  [[entry("DAYS", { description: "" })], "DAYS has no description"],
  [[entry("DAYS", { parameters: [{ name: "out", type: "any" }] })], "DAYS: parameter out has no description"],
])("what would not work in the host is refused: %#", (functions, fault) => {
  expect(() => completeMetadata({ functions })).toThrow(fault);
});
