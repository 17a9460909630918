/** Number formats that a file names by a number alone (ISO/IEC 29500-1 18.8.30), as far as they are the same in every country. */
export const builtInFormats: Readonly<Record<string, number>> = {
  General: 0,
  "0": 1,
  "0.00": 2,
  "#,##0": 3,
  "#,##0.00": 4,
  "0%": 9,
  "0.00%": 10,
  "0.00E+00": 11,
  "h:mm": 20,
  "h:mm:ss": 21,
  "mm:ss": 45,
  "[h]:mm:ss": 46,
  "@": 49,
};
