import fc from "fast-check";
import type { IgnoredEntry } from "../../../src/pane/check/IgnoredEntry";
import { ignoredText } from "../../../src/pane/check/ignoredText";
import { parseIgnored } from "../../../src/pane/check/parseIgnored";
import { splitIgnored } from "../../../src/pane/check/splitIgnored";
import { finding } from "./finding";

const entry = (key: string): IgnoredEntry => ({
  key,
  place: "Loans!E2",
  heading: "Due",
  held: '"5 Mar 2026"',
  message: "It is text.",
  reason: "agreed with the lender",
  ignoredOn: "2026-03-05",
});
const open = (key: string) => ({ id: key, key, finding: finding({}) });

test("what is kept is read back as it was, whatever was typed as the reason", () => {
  const text = fc.string();
  const entries = fc.array(
    fc.record({ key: text, place: text, heading: text, held: text, message: text, reason: text, ignoredOn: text }),
  );
  fc.assert(
    fc.property(entries, (all) => expect(parseIgnored(ignoredText(all))).toEqual({ entries: all, unreadable: 0 })),
  );
});

test.each([
  ["nothing kept", null, 0, 0],
  ["an empty text", "", 0, 0],
  ["a text that is no JSON", "{", 0, 1],
  ["JSON of another shape", "[1]", 0, 1],
  ["null", "null", 0, 1],
  ["an entry that lacks its reason", JSON.stringify({ ignored: [entry("a"), { key: "b" }, 5, null] }), 1, 3],
])("%s gives the entries that can be read and counts the others", (_, text, readable, unreadable) => {
  const parsed = parseIgnored(text);
  expect(parsed.entries).toHaveLength(readable);
  expect(parsed.unreadable).toBe(unreadable);
});

test("ignored findings are taken out of the open ones, and an entry that hides nothing now stays listed", () => {
  const split = splitIgnored([open("a"), open("b"), open("a")], [entry("a"), entry("gone")]);
  expect(split.open.map(({ key }) => key)).toEqual(["b"]);
  expect(split.ignored.map(({ entry: { key }, hides }) => [key, hides.length])).toEqual([
    ["a", 2],
    ["gone", 0],
  ]);
});
