import { nextLook } from "../../../src/domain/day/nextLook";
import { nextLookTable } from "../../../src/domain/day/nextLookTable";
import { sampleDay, sampleLook } from "./sampleLook";

test("one row for the next look", () => {
  const looks = [sampleLook("7a", { talents: ["Mina", "Teo"], changeMinutes: 15, shootingMinutes: 30 })];
  const next = nextLook(sampleDay(looks), 9 / 24);
  if (!next.ok) throw new Error("no next look");
  expect(nextLookTable(next.value).rows).toEqual([["7a", "Mina & Teo", 9 / 24, 15]]);
});

test("the headings alone where every look is shot, one format each", () => {
  const { headings, formats, rows } = nextLookTable(null);
  expect(rows).toEqual([]);
  expect(headings).toEqual(["Look", "Talent", "Change from", "Minutes"]);
  expect(formats.length).toBe(headings.length);
});
