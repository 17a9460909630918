/** A country, or a part of one, with the rules of its public holidays as shared/holidays.json writes them. */
export interface HolidayPlace {
  /** As it is shown. */
  readonly name: string;
  /** The first and the last year for which its days are known. */
  readonly firstYear: number;
  readonly lastYear: number;
  /** Days parted by |. */
  readonly days: string;
}
