import { mileageMoney } from "../../domain/runs/mileageMoney";
import { needed } from "../../domain/needed";
import { readChoice } from "../../sheet/readChoice";
import { readDate } from "../../sheet/readDate";
import { readMiles } from "../../sheet/readMiles";
import { answer } from "../answer";

/**
 * Mileage money for a drive, by the rate published for the day of travel.
 *
 * @customfunction RUNCOST
 * @family Carrying, preparing, running about
 * @answers What may I charge for the miles?
 * @param date The day of travel; a date, or text such as 2026-03-05.
 * @param distance The miles driven, or text with its unit such as "20 km".
 * @param scheme Whose rates: "US" or "UK" for a car, in the UK also a van, "UK motorcycle" or "UK bicycle".
 * @param [soFarThisYear] The miles already charged in the same tax year, which in the UK runs from 6 April; 0 when left out.
 * @shape One amount, in dollars for the US and in pounds for the UK.
 * @units Miles; a mile is 1.609344 km. Money rounded to a hundredth of a cent or penny.
 * @blanks date, distance and scheme must be given; a distance of 0 gives 0. soFarThisYear blank: 0.
 * @bounds US: travel from 2018-01-01 to 2026-12-31, the rate that changed on 2022-07-01 and 2026-07-01 included. UK: from 2011-04-06 to 2027-04-05; cars and vans have a first band of 10000 miles a tax year and a lower rate after it. Distances from 0 to 1000000 miles.
 * @errors A day for which no rate is published, a scheme that is not known and a distance that is no number are #VALUE!.
 * @source Internal Revenue Service, standard mileage rate for business (notices from 2018-03 to 2026-10 and Announcement 2026-11); HM Revenue and Customs, approved mileage allowance payments (2026: Finance Act 2026). Read in copies, not at the offices; the bicycle's rate and the UK's start in 2011 from memory.
 * @caution No tax advice: rates and who may use them change. Ask your tax adviser, and look the rate up at the tax office before you claim.
 * @example =TACK.RUNCOST(DATE(2026,6,30),100,"US") gives 72.5
 * @example =TACK.RUNCOST(DATE(2026,7,1),100,"US") gives 76
 * @example =TACK.RUNCOST("2026-04-05",100,"UK",9950) gives 35
 * @example =TACK.RUNCOST("2026-04-06",100,"UK") gives 55
 * @example =TACK.RUNCOST("2026-04-06","1609.344 km","UK bicycle") gives 200
 * @example =TACK.RUNCOST("2027-01-01",100,"US") fails give a day from 2018-01-01 to 2026-12-31
 * @example =TACK.RUNCOST("2026-04-06",100,"Mars") fails give "US", "UK", "UK motorcycle" or "UK bicycle"
 * @returns {any} The mileage money.
 */
export function runcost(date: any, distance: any, scheme: any, soFarThisYear?: any): any {
  const day = needed(readDate(date, "date"), "date", "the day of travel, such as 2026-03-05");
  if (!day.ok) return answer(day);
  const miles = needed(readMiles(distance, "distance"), "distance", "the miles driven, such as 12.5");
  if (!miles.ok) return answer(miles);
  const rates = ["US", "UK", "UK motorcycle", "UK bicycle"] as const;
  const whose = needed(readChoice(scheme, "scheme", rates), "scheme", 'whose rates, such as "US" or "UK"');
  if (!whose.ok) return answer(whose);
  const before = readMiles(soFarThisYear, "soFarThisYear");
  if (!before.ok) return answer(before);
  return answer(mileageMoney(day.value, miles.value, whose.value, before.value ?? 0), "money");
}
