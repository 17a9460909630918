import { dateFromText } from "../domain/dates/dateFromText";

/** A day and a month by its name, perhaps with a weekday: one number and no more. */
const ONE_NUMBER = /^\D*\d{1,2}\D*$/;

/**
 * The day that a text without its year most likely means: "Fri 20 Nov", "3 Dec"; null where it is no such text.
 *
 * The first such day that is not before `earliest` where that is known, else the one nearest to `asOf`; a weekday must be right.
 */
export function dayWithoutYear(text: string, asOf: number, earliest: number | null): number | null {
  if (!ONE_NUMBER.test(text)) return null;
  const near = earliest ?? asOf;
  const year = Math.floor(near / 365.2425) + 1900;
  const days = [-1, 0, 1, 2].flatMap((more) => {
    const day = dateFromText(`${text} ${year + more}`, "");
    return day.ok ? [day.value] : [];
  });
  const fitting = earliest === null ? days : days.filter((day) => day >= earliest);
  return fitting.sort((a, b) => Math.abs(a - near) - Math.abs(b - near))[0] ?? null;
}
