import { places } from "../../../shared/holidays.json";

/** The places whose public holidays are known, with the first and last year for which they are, in the order of the data. */
export const holidayPlaces: readonly {
  readonly name: string;
  readonly firstYear: number;
  readonly lastYear: number;
}[] = places.map(({ names, firstYear, lastYear }) => ({ name: names.split("|")[0] ?? "", firstYear, lastYear }));
