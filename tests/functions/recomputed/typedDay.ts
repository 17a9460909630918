import type { Drawn } from "./drawn";

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** A day as people keep it in a cell: mostly a serial day, sometimes with a time, sometimes text that is one day only. */
export function typedDay(draw: Drawn, day: number): unknown {
  const date = new Date((day - 25569) * 86_400_000);
  const iso = date.toISOString().slice(0, 10);
  const month = MONTHS[date.getUTCMonth()]!;
  const [ofMonth, year] = [date.getUTCDate(), date.getUTCFullYear()];
  const texts = [
    iso,
    ` ${iso} `,
    `${ofMonth} ${month} ${year}`,
    `${month} ${ofMonth}, ${year}`,
    `${ofMonth}-${month}-${year}`,
  ];
  return draw.often(70) ? day : draw.often(30) ? day + 0.625 : draw.one(texts);
}
