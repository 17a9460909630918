import fc from "fast-check";
import { isOneSlip } from "../../src/checks/isOneSlip";

/**
 * The distance in the four slips of F. J. Damerau, "A technique for computer detection and correction of spelling errors",
 * CACM 7(3), 1964 (from memory), by the table of all beginnings: optimal string alignment.
 */
function distance(one: string, other: string): number {
  const table = Array.from({ length: one.length + 1 }, (_, i) =>
    Array.from({ length: other.length + 1 }, (_, j) => (i === 0 ? j : j === 0 ? i : 0)),
  );
  for (let i = 1; i <= one.length; i++) {
    for (let j = 1; j <= other.length; j++) {
      const cost = one[i - 1] === other[j - 1] ? 0 : 1;
      let least = Math.min(table[i - 1]![j]! + 1, table[i]![j - 1]! + 1, table[i - 1]![j - 1]! + cost);
      if (i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1]) {
        least = Math.min(least, table[i - 2]![j - 2]! + 1);
      }
      table[i]![j] = least;
    }
  }
  return table[one.length]![other.length]!;
}

test("the table itself gives the textbook's distances (kitten and sitting 3, CA and AC 1)", () => {
  expect(distance("kitten", "sitting")).toBe(3);
  expect(distance("CA", "AC")).toBe(1);
});

test.each([
  ["orla", "ola", true],
  ["orla", "orlaa", true],
  ["orla", "orle", true],
  ["orla", "olra", true],
  ["orla", "orla", false],
  ["orla", "alro", false],
  ["", "a", true],
  ["", "", false],
  ["ab", "", false],
])("%p and %p: %p", (one, other, expected) => {
  expect(isOneSlip(one, other)).toBe(expected);
  expect(isOneSlip(other, one)).toBe(expected);
});

test("is true exactly where the distance is one", () => {
  const word = fc.string({ unit: fc.constantFrom("a", "b", "c"), maxLength: 7 });
  fc.assert(
    fc.property(word, word, (one, other) => {
      expect(isOneSlip(one, other)).toBe(distance(one, other) === 1);
    }),
    { numRuns: 3000 },
  );
});
