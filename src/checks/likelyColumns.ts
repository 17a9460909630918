import { FIRST_LIKELY_DAY } from "../sheet/FIRST_LIKELY_DAY";
import { isFilledCell } from "../sheet/isFilledCell";
import { nameKey } from "../sheet/nameKey";
import { readCell } from "../sheet/readCell";
import { readMoney } from "../sheet/readMoney";
import type { SheetTable } from "../sheet/sheetTable";
import { readDay } from "./readDay";

/** What a column whose heading is not understood could hold, told by its cells. */
type LikelyField = "lender" | "value" | "day";

/** Most pieces are worth more than this, and most numbers below it are sizes and counts. */
const LEAST_VALUE = 60;
/** 2100-01-01 */
const FIRST_UNLIKELY_DAY = 73_051;

/**
 * The columns without a meaning whose cells look like lenders, values or days, as indices into the headings. Three cells in four
 * must, and two of them at least; lenders come again and again, as notes and descriptions do not.
 */
export function likelyColumns(table: SheetTable, field: LikelyField): readonly number[] {
  const taken = new Set([...Object.values(table.columnOf), ...[...(table.contested?.values() ?? [])].flat()]);
  return table.headings.flatMap((heading, column) => {
    if (heading.trim() === "" || taken.has(column)) return [];
    const held = table.dataRows.map((row) => table.cells[row]?.[column]).filter(isFilledCell);
    const fitting = held.filter(FITS[field]);
    if (fitting.length < 2 || fitting.length * 4 < held.length * 3) return [];
    return field === "lender" && new Set(fitting.map((cell) => nameKey(String(readCell(cell))))).size === fitting.length
      ? []
      : [column];
  });
}

const FITS: Readonly<Record<LikelyField, (raw: unknown) => boolean>> = {
  lender: (raw) => {
    const cell = readCell(raw);
    return typeof cell === "string" && /\p{L}{3}/u.test(cell) && cell.length <= 40 && readDay(cell).is === "no day";
  },
  value: (raw) => {
    const money = readMoney(raw, "");
    const isDay = typeof raw === "number" && raw >= FIRST_LIKELY_DAY;
    return money.ok && money.value !== null && money.value.amount >= LEAST_VALUE && !isDay;
  },
  day: (raw) => {
    if (typeof raw === "number") return raw >= FIRST_LIKELY_DAY && raw < FIRST_UNLIKELY_DAY;
    const { is } = readDay(raw);
    return is === "text" || is === "two days" || is === "wrong weekday";
  },
};
