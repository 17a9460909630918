import { latefee } from "../../src/functions/bindings/latefee";

// Published worked examples of simple interest by the day; figures from memory, not read again.

test("is Microsoft's example of ACCRINTM: 1,000 at 10% a year from 1 April to 15 June 2008, actual days over 365", () => {
  const daysFromAprilFirstToJuneFifteenth = 75;
  expect(latefee(1000, daysFromAprilFirstToJuneFifteenth, 0.1 / 365)).toBeCloseTo(20.54795, 4);
});

test("is the example of GOV.UK on late commercial payments: £1,000 at 8.5% a year is 23p a day, £11.50 after 50 days", () => {
  expect(Math.round((latefee("£1,000", 1, 0.085 / 365) as number) * 100)).toBe(23);
  expect(latefee("£1,000", 50, "£0.23 a day")).toBe(11.5);
});
