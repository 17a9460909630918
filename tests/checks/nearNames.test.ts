import fc from "fast-check";
import { isLikelySlip } from "../../src/checks/isLikelySlip";
import { nearNames } from "../../src/checks/nearNames";

test.each([
  ["Maison Orla", "Maison Ola", true],
  ["Maison Orla", "Maisno Orla", true],
  ["Corbel House", "Corbell House", true],
  ["Corbel House", "Corbel Huose", true],
  ["Ado", "Ada", false],
  ["Halden", "Holden", false],
  ["Maison Lea", "Maison Leo", false],
  ["Studio 1", "Studio 2", false],
  ["Studio 1", "Studio 11", false],
  ["Atelier A", "Atelier AB", false],
  ["Barlow House", "Harlow House", false],
  ["Maison Orla", "MAISON ORLA", false],
  ["Maison Orla", "Maison Olla Paris", false],
  ["Orrin & Vale", "Orrin and Vale", true],
  ["Lune + Fils", "Lune et Fils", true],
  ["Orrin & Vale", "Orrin + Vale", false],
  ["Orrin & Vale", "Orrin and Bale", false],
])("%p for %p: likely a slip %p", (one, other, expected) => {
  expect(isLikelySlip(one, other)).toBe(expected);
  expect(isLikelySlip(other, one)).toBe(expected);
});

test("finds just the names that comparing with every one finds", () => {
  const name = fc
    .tuple(
      fc.constantFrom("Maison", "Corbel", "Studio"),
      fc.string({ unit: fc.constantFrom("o", "r", "l", "a", "1", " ", " and ", " & "), maxLength: 6 }),
    )
    .map((words) => words.join(" "));
  fc.assert(
    fc.property(fc.uniqueArray(name, { maxLength: 20 }), name, (names, asked) => {
      const expected = names.filter((other) => isLikelySlip(asked, other));
      expect([...nearNames(names)(asked)].sort()).toEqual([...expected].sort());
    }),
    { numRuns: 500 },
  );
});
