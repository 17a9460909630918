import { nextlook } from "../../../src/functions/bindings/nextlook";
import { looksToday } from "../../../src/pane/today/looksToday";
import { sayNextLook } from "../../../src/pane/today/sayNextLook";
import type { Cell } from "../../../src/sheet/cell";
import { readSheets } from "../readSheets";

const DAY = 46111;
const headings = ["Look", "Order", "Date", "Talent", "Change", "Hair and make-up", "Shooting", "Shot at"];

const rows = (...shotAt: readonly Cell[]): readonly (readonly Cell[])[] => [
  [1, 1, DAY, "Mirela", 15, 45, 30, shotAt[0] ?? null],
  [2, 2, DAY, "Jonas", 12, 20, 25, shotAt[1] ?? null],
];

async function saidAt(now: number, cells: readonly (readonly Cell[])[]): Promise<string> {
  const sheets = [
    { name: "Looks", rows: [headings, ...cells] },
    { name: "Day", rows: [["Call", "08:00"]] },
  ];
  const day = looksToday(await readSheets(sheets), DAY, null, new Map())?.given?.day;
  if (day === undefined) throw new Error("the day cannot be planned");
  return sayNextLook(day, now);
}

test.each([8, 8.5, 9, 9.5, 10.25, 12])(
  "at %d o'clock the look and its minutes are those that NEXTLOOK gives",
  async (hour) => {
    for (const cells of [rows(), rows(9 / 24)]) {
      const [, given] = nextlook(
        [headings, ...cells].map((row) => [...row]),
        hour / 24,
        8 / 24,
      );
      const said = await saidAt(hour / 24, cells);
      const minutes = Number(given?.[3]);
      expect(said).toContain(`Look ${given?.[0]}, ${given?.[1]} `);
      const whole = /is called in (?:(\d+) h ?)?(?:(\d+) min)?/.exec(said);
      expect(whole === null ? 0 : Number(whole[1] ?? 0) * 60 + Number(whole[2] ?? 0)).toBe(minutes);
    }
  },
);

test("it says when it is called and when its change begins, and how it follows the day", async () => {
  expect(await saidAt(8 / 24, rows())).toBe(
    "At 08:00: Look 1, Mirela is called in 1 h, at 09:00; get ready from 08:00.",
  );
  expect(await saidAt(10 / 24, rows())).toContain("No look says yet that it was shot: fill Shot at");
  expect(await saidAt(9.25 / 24, rows(9 / 24))).not.toContain("fill Shot at");
});

test("once every look is shot it says so", async () => {
  expect(await saidAt(11 / 24, rows(9 / 24, 9.6 / 24))).toBe("Every look is shot.");
});
