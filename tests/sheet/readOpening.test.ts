import fc from "fast-check";
import { readOpening } from "../../src/sheet/readOpening";

/** "10:00-13:00 14:00-18:00". */
function spans(open: unknown, close: unknown = null): string {
  const read = readOpening(open, close, "Open", "Close");
  if (!read.ok) return `${read.problem.reason}: ${(read.problem.facts as { argument: string }).argument}`;
  return read.value === null
    ? "blank"
    : read.value.map(({ from, until }) => `${clock(from)}-${clock(until)}`).join(" ");
}

function clock(time: number): string {
  const minutes = Math.round(time * 1440);
  return `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
}

test.each([
  [10 / 24, 18 / 24, "10:00-18:00"],
  ["10:00", "18:00", "10:00-18:00"],
  ["9.30am", "6pm", "09:30-18:00"],
  ["10-13, 14-18", null, "10:00-13:00 14:00-18:00"],
  ["10–13 / 14–18", null, "10:00-13:00 14:00-18:00"],
  ["10:00, 14:00", "13:00, 18:00", "10:00-13:00 14:00-18:00"],
  ["9am to 6pm", null, "09:00-18:00"],
  ["2-6pm", null, "14:00-18:00"],
  ["11-2pm", null, "11:00-14:00"],
  ["9 bis 17", null, "09:00-17:00"],
  ["22:00", "02:00", "22:00-26:00"],
  ["10:00", null, "10:00-24:00"],
  [null, "18:00", "00:00-18:00"],
  [null, null, "blank"],
])("reads %p and %p as %s", (open, close, expected) => {
  expect(spans(open, close)).toBe(expected);
});

test.each([
  ["by appointment", null, "argument-not-usable: Open"],
  ["10:00", "late", "argument-not-usable: Close"],
  ["10, 14", "18", "argument-not-usable: Close"],
  ["10-13-14", null, "argument-not-usable: Open"],
  [{ error: "#REF!" }, null, "error-in-cell: Open"],
  ["10:00", { error: "#N/A" }, "error-in-cell: Close"],
])("refuses %p and %p with %s", (open, close, expected) => {
  expect(spans(open, close)).toBe(expected);
});

test("never throws, whatever the cells hold", () => {
  fc.assert(fc.property(fc.anything(), fc.anything(), (open, close) => void readOpening(open, close, "Open", "Close")));
});
