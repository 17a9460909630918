import * as formulajs from "@formulajs/formulajs";
import { loadSource } from "../loadSource.mjs";
import { fastest } from "./fastest.mjs";
import { showRow } from "./showRow.mjs";
import { timed } from "./timed.mjs";

const CALLS = 2_000;
const RUNS = 30;
const OUT = 46_083;

/** One DUE call with 30 closed days against a general function library's WORKDAY on the same days. */
export async function singleCells() {
  const { due } = await loadSource("src/functions/bindings/due.ts");
  // As lists of public holidays are: in order and on working days, here every other Monday.
  const closed = Array.from({ length: 30 }, (_, place) => [OUT + 7 + place * 14]);
  const closedDates = closed.map(([serial]) => new Date(Date.UTC(1899, 11, 30) + serial * 86_400_000));
  const outDate = new Date(Date.UTC(1899, 11, 30) + OUT * 86_400_000);
  const unordered = closed.map((_, place) => closed[(place * 7) % closed.length]);
  showRow(["one call with 30 closed days", "WORKDAY", "DUE", "times faster", "bar"]);
  const after = (days) => `${days} working days after shoot`;
  for (const [terms, days, shoot, closedDays = closed] of [
    ["3 working days", 3],
    ["10 working days", 10],
    ["20 working days", 20],
    [after(3), 3, OUT],
    [after(10), 10, OUT],
    // Said in words of one's own, which the grammar reads, and days in any order: more work than WORKDAY is given.
    ["within 3 working days of wrap", 3, OUT],
    ["next working day, please", 1],
    ["3 working days", 3, null, unordered],
  ]) {
    const times = timed(RUNS, {
      due: () => {
        for (let call = 0; call < CALLS; call++) due(OUT + (call % 7), terms, shoot ?? null, closedDays);
      },
      workday: () => {
        for (let call = 0; call < CALLS; call++) formulajs.WORKDAY(outDate, days, closedDates);
      },
    });
    const [dueTook, workdayTook] = [times.due, times.workday].map((runs) => (fastest(runs) * 1000) / CALLS);
    const ratio = (workdayTook / dueTook).toFixed(1);
    const said = closedDays === closed ? terms : `${terms}, closed days in no order`;
    const bar = said === terms && /^\d/.test(terms) ? "under 2 us, 10 times" : "under 2 us";
    showRow([said, `${workdayTook.toFixed(2)} us`, `${dueTook.toFixed(2)} us`, ratio, bar]);
  }
}
