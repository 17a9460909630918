/** A day of the calendar: month 1 to 12, day 1 to 31. */
export interface Ymd {
  readonly year: number;
  readonly month: number;
  readonly day: number;
}

/** The calendar day of a serial day (1 to 2958465, a fraction is cut off). Serial 60 is the 1900 system's 1900-02-29. */
export function ymdFromSerial(serial: number): Ymd {
  const whole = Math.floor(serial);
  if (whole === 60) return { year: 1900, month: 2, day: 29 };
  // Days since 0000-03-01, in eras of 400 years, so that the leap day is each year's last.
  const days = whole + 693899 + (whole < 60 ? 1 : 0);
  const era = (days / 146097) | 0;
  const dayOfEra = days - era * 146097;
  const yearOfEra =
    ((dayOfEra - ((dayOfEra / 1460) | 0) + ((dayOfEra / 36524) | 0) - ((dayOfEra / 146096) | 0)) / 365) | 0;
  const dayOfYear = dayOfEra - (365 * yearOfEra + ((yearOfEra / 4) | 0) - ((yearOfEra / 100) | 0));
  const marchMonth = ((5 * dayOfYear + 2) / 153) | 0;
  const month = marchMonth < 10 ? marchMonth + 3 : marchMonth - 9;
  return {
    year: yearOfEra + era * 400 + (month < 3 ? 1 : 0),
    month,
    day: dayOfYear - (((153 * marchMonth + 2) / 5) | 0) + 1,
  };
}
