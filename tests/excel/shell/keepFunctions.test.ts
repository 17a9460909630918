import { keepFunctions } from "../../../src/excel/shell/keepFunctions";

afterEach(() => Reflect.deleteProperty(globalThis, "CustomFunctions"));

test("keeps each function that is handed to the host, and the host still gets it", () => {
  const handed: unknown[][] = [];
  const host = { associate: (...args: unknown[]) => void handed.push(args) };
  Object.assign(globalThis, { CustomFunctions: host });
  const kept = keepFunctions();
  const due = () => 46086;
  (globalThis as unknown as { CustomFunctions: typeof host }).CustomFunctions.associate("DUE", due);
  expect(handed).toEqual([["DUE", due]]);
  expect(kept.get("DUE")?.()).toBe(46086);
});

test("passes on what it does not know", () => {
  const handed: unknown[][] = [];
  Object.assign(globalThis, { CustomFunctions: { associate: (...args: unknown[]) => void handed.push(args) } });
  const kept = keepFunctions();
  CustomFunctions.associate({ DUE: () => 1 } as never);
  expect([handed.length, kept.size]).toEqual([1, 0]);
});

test("keeps nothing where there is no host", () => {
  expect(keepFunctions().size).toBe(0);
});
