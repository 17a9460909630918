/** A serial day of a 1904 workbook as one of the 1900 system: 1462 days apart (ECMA-376 Part 4, 3.17.4.1). */
export function serialFrom1904(serial: number): number {
  return serial + 1462;
}
