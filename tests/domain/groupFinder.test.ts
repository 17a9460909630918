import { groupFinder } from "../../src/domain/groupFinder";
import type { Problem } from "../../src/domain/problem";

const unread: Problem = { reason: "error-in-cell", facts: { argument: "Lender, row 2", given: "#N/A" } };
const letters = (name: string): string => name.toLowerCase().replace(/[^a-z]/g, "");

function finder() {
  return groupFinder(letters, (name, currency) => ({ name, currency }));
}

test("spellings with one key are one group, named as first seen", () => {
  const find = finder();
  const first = find("Maison Orla", "GBP");
  expect(find("MAISON-ORLA", "GBP")).toBe(first);
  expect(find("Maison Orla", "GBP")).toBe(first);
  expect(first).toEqual({ name: "Maison Orla", currency: "GBP" });
});

test("another currency, and none, are groups of their own, however often they take turns", () => {
  const find = finder();
  const [pounds, euros, none] = [find("Ada", "GBP"), find("Ada", "EUR"), find("Ada", null)];
  expect(new Set([pounds, euros, none]).size).toBe(3);
  expect([find("Ada", "GBP"), find("Ada", null), find("ada", "EUR")]).toEqual([pounds, none, euros]);
  expect(find.all).toEqual([pounds, euros, none]);
});

test("no name, a name without letters and one that cannot be read are groups of their own", () => {
  const find = finder();
  const groups = [find(null, null), find("!!", null), find("??", null), find(unread, null), find("x", unread)];
  expect(new Set(groups).size).toBe(5);
  expect([find(null, null), find("!!", null), find(unread, null)]).toEqual([groups[0], groups[1], groups[3]]);
});

test("the key of a spelling is worked out once", () => {
  let asked = 0;
  const find = groupFinder(
    (name) => {
      asked++;
      return name;
    },
    () => ({}),
  );
  for (let row = 0; row < 5; row++) find("Ada", null);
  expect(asked).toBe(1);
});
