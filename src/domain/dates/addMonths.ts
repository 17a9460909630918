import { daysInMonth } from "./daysInMonth";
import { serialFromYmd } from "./serialFromYmd";
import { ymdFromSerial } from "./ymdFromSerial";

/**
 * The same day so many months on (or back, below 0), clipped at the month's end: 31 January and one month is the last
 * of February. null where no workbook can show the day.
 */
export function addMonths(serial: number, months: number): number | null {
  const { year, month, day } = ymdFromSerial(serial);
  const count = year * 12 + month - 1 + months;
  const toYear = Math.floor(count / 12);
  const toMonth = count - toYear * 12 + 1;
  return serialFromYmd(toYear, toMonth, Math.min(day, daysInMonth(toYear, toMonth)));
}
