import { planRun } from "../../../src/domain/runs/planRun";
import { runTable } from "../../../src/domain/runs/runTable";
import type { Stop } from "../../../src/domain/runs/stop";
import { isProblem } from "../../../src/domain/isProblem";
import type { Problem } from "../../../src/domain/problem";
import { sayProblem } from "../../../src/domain/wording";
import { stopOf } from "./stopOf";

const NINE = 9 / 24;

/** Rows as one reads them, times as hh:mm; every leg takes 30 minutes unless told. */
function rows(
  stops: readonly Stop[],
  leaveAt = NINE,
  returns = true,
  minutes: (from: number, to: number) => number = () => 30,
) {
  const plan = planRun(stops, minutes, leaveAt, returns);
  if (!plan.ok) return sayProblem(plan.problem);
  return runTable(plan.value).rows.map((row) =>
    row.map((cell, column) => {
      if (isProblem(cell)) return sayProblem(cell);
      return column % 2 === 1 && typeof cell === "number" ? clock(cell) : cell;
    }),
  );
}

function clock(fraction: number): string {
  const minutes = Math.round(fraction * 1440);
  return `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
}

test("the start stands first from the time given, and again last; a wait stands with its stop", () => {
  expect(rows([stopOf("Studio"), stopOf("Orla", { hours: [[10, 12]], minutes: 15 })])).toEqual([
    ["Studio", "09:00", 0, "09:00"],
    ["Orla", "09:30", 30, "10:15"],
    ["Studio", "10:45", 0, "10:45"],
  ]);
});

test("a run that does not return ends at its last stop", () => {
  expect(rows([stopOf("Studio"), stopOf("Orla")], NINE, false)).toEqual([
    ["Studio", "09:00", 0, "09:00"],
    ["Orla", "09:30", 0, "09:30"],
  ]);
});

test("the start's Open holds one back, its minutes are spent before, its Close is when one must be back", () => {
  const start = stopOf("Studio", { hours: [[9.5, 11]], minutes: 10 });
  expect(rows([start, stopOf("Orla")])).toEqual([
    ["Studio", "09:00", 20, "09:30"],
    ["Orla", "10:00", 0, "10:00"],
    ["Studio", "10:30", 0, "10:30"],
  ]);
  expect(rows([start, stopOf("Orla", { minutes: 31 })])).toEqual([
    ["Studio", "09:00", 20, "09:30"],
    [
      "Orla",
      "Orla cannot be reached, visited and left in time, even as the only stop; leave sooner, or go another day.",
      null,
      null,
    ],
    ["Studio", "09:30", 0, "09:30"],
  ]);
  expect(rows([start, stopOf("Orla", { minutes: 31 })], NINE, false)).toHaveLength(2);
  expect(rows([start, stopOf("Orla")], 12 / 24)).toMatch(/^leaveAt: "12:00" cannot be used; .*back at Studio/);
});

test("a visit ends by Close, in one of several spans, or over two that touch", () => {
  const visit = (hours: readonly (readonly [number, number])[], minutes: number) =>
    rows([stopOf("Studio"), stopOf("Orla", { hours, minutes })])[1]?.slice(2);
  expect(visit([[9, 10]], 30)).toEqual([0, "10:00"]);
  expect(
    visit(
      [
        [9, 10],
        [11, 12],
      ],
      31,
    ),
  ).toEqual([90, "11:31"]);
  expect(
    visit(
      [
        [11, 12],
        [9, 10],
        [10, 11],
      ],
      31,
    ),
  ).toEqual([0, "10:01"]);
  expect(visit([[9, 10]], 31)).toEqual([null, null]);
  expect(visit([[23, 26]], 60)).toEqual([810, "24:00"]);
});

test("stops that cannot be met stand before the returning start; what is due soonest goes first, then as many as can be", () => {
  const noon = { hours: [[9, 10.25]] as const, minutes: 15 };
  const names = (due: readonly (number | null)[]) =>
    (
      rows([stopOf("Studio"), ...due.map((day, index) => stopOf("ABC"[index]!, { ...noon, due: day }))]) as unknown[][]
    ).map(([name, arrive]) => (String(arrive).startsWith("There is no time") ? `no ${String(name)}` : name));
  // 09:30 to 09:45, 10:15 is too late for a second visit.
  expect(names([null, null, null])).toEqual(["Studio", "A", "no B", "no C", "Studio"]);
  expect(names([46090, 46085, null])).toEqual(["Studio", "B", "no A", "no C", "Studio"]);
  const legs = (from: number, to: number): number => (from === 3 || to === 3 ? 40 : 10);
  const far = [
    stopOf("Studio"),
    stopOf("A", noon),
    stopOf("B", noon),
    stopOf("C", { ...noon, hours: [[9, 9.95]], due: 46085 }),
  ];
  expect((rows(far, NINE, true, legs) as unknown[][]).map(([name]) => name)).toEqual([
    "Studio",
    "C",
    "A",
    "B",
    "Studio",
  ]);
  const near = far.map((stop, index) => (index === 3 ? { ...stop, due: null } : stop));
  expect((rows(near, NINE, true, legs) as unknown[][]).map(([name]) => name)).toEqual([
    "Studio",
    "A",
    "B",
    "C",
    "Studio",
  ]);
});

test("a cell that cannot be read keeps its own stop out and no other; in the start's row it is the answer", () => {
  const problem: Problem = { reason: "error-in-cell", facts: { argument: "Open, row 3", given: "#N/A" } };
  const shown = rows([stopOf("Studio"), stopOf("Orla", { problem }), stopOf("Rail & Co")]) as unknown[][];
  expect(shown.map(([name]) => name)).toEqual(["Studio", "Rail & Co", "Orla", "Studio"]);
  expect(shown[2]![1]).toBe(sayProblem(problem));
  expect(rows([stopOf("Studio", { problem }), stopOf("Orla")])).toBe(sayProblem(problem));
});

test("ties go by least travel, then by row", () => {
  // Both orders end with the wait at C; by way of A first the road is shorter.
  const table = [
    [0, 20, 10, 10],
    [20, 0, 10, 10],
    [10, 10, 0, 20],
    [10, 10, 20, 0],
  ];
  const stops = [stopOf("Studio"), stopOf("A"), stopOf("B"), stopOf("C", { hours: [[14, 15]] })];
  const shown = rows(stops, NINE, true, (from, to) => table[from]![to]!) as unknown[][];
  expect(shown.map(([name]) => name)).toEqual(["Studio", "B", "A", "C", "Studio"]);
  expect((rows([stopOf("Studio"), stopOf("A"), stopOf("B")]) as unknown[][]).map(([name]) => name)).toEqual([
    "Studio",
    "A",
    "B",
    "Studio",
  ]);
});

test("more than a hundred stops are refused, and a hundred are put in order", () => {
  const stops = Array.from({ length: 102 }, (_, index) => stopOf(`S${index}`));
  expect(rows(stops)).toMatch(/^stops: "101 stops" cannot be used/);
  const around = (from: number, to: number): number => Math.min(Math.abs(from - to), 101 - Math.abs(from - to));
  const plan = planRun(stops.slice(0, 101), around, NINE, true);
  if (!plan.ok) throw new Error(sayProblem(plan.problem));
  expect(plan.value.unmet).toEqual([]);
  // Round the ring once is the shortest there is.
  expect(plan.value.travelMinutes).toBeLessThanOrEqual(101 * 1.02);
});
