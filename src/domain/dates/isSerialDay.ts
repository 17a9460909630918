import { lastSerial } from "./lastSerial";

/** Whether a number, its time of day cut off, is a day the workbook can show: 1 (1900-01-01) to 2958465 (9999-12-31). */
export function isSerialDay(serial: number): boolean {
  // Written so that NaN is no day.
  return serial >= 1 && serial < lastSerial + 1;
}
