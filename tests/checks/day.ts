import { serialFromYmd } from "../../src/domain/dates/serialFromYmd";

/** The serial day of an ISO date, for tables of examples. */
export function day(iso: string): number {
  const [year, month, date] = iso.split("-").map(Number);
  const serial = serialFromYmd(year!, month!, date!);
  if (serial === null) throw new Error(`${iso} is no day`);
  return serial;
}
