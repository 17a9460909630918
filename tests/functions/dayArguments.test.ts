import { sayProblem } from "../../src/domain/wording";
import { dayArguments } from "../../src/functions/dayArguments";

const looks = [
  ["Look", "Talent", "Change", "Shooting"],
  [1, "Mina", 15, 30],
  [2, "Teo", 20, 25],
];

function said(...args: Parameters<typeof dayArguments>): string {
  const outcome = dayArguments(...args);
  return outcome.ok ? "" : sayProblem(outcome.problem);
}

test("the whole day is read from its arguments", () => {
  const changes = [
    ["", 1, 2],
    [1, 0, 10],
    [2, 15, 0],
  ];
  const outcome = dayArguments(looks, "09:00", [["dressers", 2]], changes, null);
  expect(outcome.ok && outcome.value).toMatchObject({
    call: 0.375,
    crew: { dressers: 2 },
    looks: [{ key: "1" }, { key: "2" }],
  });
  expect(outcome.ok && outcome.value.changes.get("2")?.get("1")).toBe(15);
});

test("with a table of changes the looks need no change minutes of their own", () => {
  const bare = looks.map(([look, talent, , shooting]) => [look, talent, shooting]);
  expect(
    said(
      bare,
      "09:00",
      null,
      [
        ["", 1, 2],
        [1, 0, 10],
        [2, 15, 0],
      ],
      null,
    ),
  ).toBe("");
  expect(said(bare, "09:00", null, null, null)).toMatch(/Change or Likely/);
});

test("looks of another day may stand in the table of changes, but not those alone", () => {
  expect(
    said(
      looks,
      "09:00",
      null,
      [
        ["", 2, 9],
        [2, 0, 10],
        [9, 15, 0],
      ],
      null,
    ),
  ).toBe("");
  expect(
    said(
      looks,
      "09:00",
      null,
      [
        ["", 8, 9],
        [8, 0, 10],
        [9, 15, 0],
      ],
      null,
    ),
  ).toMatch(/^changes: "8, 9" cannot be used; give the look numbers of this day/);
});

test.each([
  ["looks left out", [null, "09:00", null, null, null], /^looks is blank/],
  ["call left out", [looks, "", null, null, null], /^call is blank; give the time everybody is there/],
  ["call that is no time", [looks, "early", null, null, null], /^call: "early" cannot be used/],
  ["an unknown label", [looks, "09:00", [["Drivers", 2]], null, null], /^people: "Drivers"/],
  ["changes that are no table", [looks, "09:00", null, [[5, 6]], null], /^changes:/],
  ["a column that is missing", [looks.map((row) => row.slice(0, 3)), "09:00", null, null, null], /Shooting/],
] as [string, Parameters<typeof dayArguments>, RegExp][])("%s is one sentence", (_, args, sentence) => {
  expect(said(...args)).toMatch(sentence);
});
