import fc from "fast-check";
import { groupsInOrder } from "../../src/domain/groupsInOrder";

test("rows of one key stand together in their own order, the lowest key first and endless last", () => {
  const rows = ["b2", "a1", "b1", "c", "a2"].map((name) => ({ name, key: { a: -1, b: 7, c: Infinity }[name[0]!]! }));
  expect(groupsInOrder(rows, ({ key }) => key).map((group) => group.map(({ name }) => name))).toEqual([
    ["a1", "a2"],
    ["b2", "b1"],
    ["c"],
  ]);
});

test("is the stable sort of the language, cut where the key changes", () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(fc.integer({ min: -5, max: 5 }), fc.nat())), (rows) => {
      expect(groupsInOrder(rows, ([key]) => key).flat()).toEqual([...rows].sort(([a], [b]) => a - b));
    }),
  );
});
