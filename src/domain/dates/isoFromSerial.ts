import { ymdFromSerial } from "./ymdFromSerial";

/** A serial day (1 to 2958465, a fraction is cut off) as yyyy-mm-dd. */
export function isoFromSerial(serial: number): string {
  const { year, month, day } = ymdFromSerial(serial);
  return `${year}-${month < 10 ? "0" : ""}${month}-${day < 10 ? "0" : ""}${day}`;
}
