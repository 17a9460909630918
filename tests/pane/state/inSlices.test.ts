import { inSlices } from "../../../src/pane/state/inSlices";

function* steps(count: number, told: string[]) {
  for (let step = 0; step < count; step++) yield;
  told.push("done");
  return 7;
}

beforeEach(() => {
  // A clock by which every step takes five milliseconds.
  let now = 0;
  jest.spyOn(performance, "now").mockImplementation(() => (now += 5));
});
afterEach(() => jest.restoreAllMocks());

test("long work lets others have their turn every few steps, and comes to its end", async () => {
  const told: string[] = [];
  const turns: string[] = [];
  const found = await inSlices(steps(40, told), () => {
    turns.push("asked");
    return true;
  });
  expect(found).toBe(7);
  expect(turns.length).toBeGreaterThanOrEqual(10);
  expect(told).toEqual(["done"]);
});

test("work that nobody wants any more is left off", async () => {
  const told: string[] = [];
  let asked = 0;
  expect(await inSlices(steps(10_000, told), () => ++asked < 3)).toBeNull();
  expect(asked).toBe(3);
  expect(told).toEqual([]);
});
