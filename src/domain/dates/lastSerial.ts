/** The last day a workbook can show, 9999-12-31 (ECMA-376 Part 4, 3.17.4.1); the first is serial 1, 1900-01-01. */
export const lastSerial = 2958465;
