/**
 * The fields in which a 0 says something (no fee, no minutes, the equator). In every other field that is
 * understood a 0 is a blank cell, for some hosts send blank cells so.
 */
export const meaningfulZeroFields: ReadonlySet<string> = new Set([
  "rentalFee",
  "deposit",
  "lateFee",
  "amount",
  "kept",
  "amountRefunded",
  "courierDays",
  "latitude",
  "longitude",
  "minutes",
  "order",
  "change",
  "hairMakeup",
  "shooting",
  "low",
  "likely",
  "high",
]);
