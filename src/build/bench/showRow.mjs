/** Prints a row of a table, the first column wide. */
export function showRow(values) {
  console.log(values.map((value, place) => String(value).padEnd(place === 0 ? 46 : 16)).join(""));
}
