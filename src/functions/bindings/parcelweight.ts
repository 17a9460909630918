import { parcelWeight } from "../../domain/carry/parcelWeight";
import { needed } from "../../domain/needed";
import { succeed } from "../../domain/succeed";
import { readNumber } from "../../sheet/readNumber";
import { readWeight } from "../../sheet/readWeight";
import { answer } from "../answer";
import { numberArguments } from "../numberArguments";

/**
 * The weight a carrier charges for: what the parcel weighs, or its volume over the carrier's divisor where that is more.
 *
 * @customfunction PARCELWEIGHT
 * @family Carrying, preparing, running about
 * @answers What weight is the courier going to charge for?
 * @param length The length of the packed parcel in cm.
 * @param width The width of the packed parcel in cm.
 * @param height The height of the packed parcel in cm.
 * @param weight What the packed parcel weighs in kg, or as text with its unit, such as "22 lb".
 * @param divisor The carrier's cubic centimetres to the kilogram, often 5000, also 4000 or 6000; see its price list.
 * @param [roundUp] The step up to which the carrier rounds in kg, such as 0.5 or 1; not rounded when left out.
 * @shape One number.
 * @units Kilograms and centimetres; a divisor of 139 cubic inches to the pound is about 5022 here.
 * @blanks roundUp blank or 0: not rounded. All others must be given.
 * @bounds Sides and divisor above 0, weight of 0 or more. Carriers that round the sides first get rounded sides; sizes they refuse or surcharge are not checked.
 * @errors A side, weight or divisor that is blank, 0 where it may not be, below 0 or no number is #VALUE!.
 * @source Divisors as carriers publish them: 5000 by UPS (next whole kg) and DHL Express, 4000 by DHL Parcel Poland, 6000 by some parcel carriers and in air cargo; they change, so the carrier's own list decides.
 * @caution What is charged is for the carrier to say; parcels above about 23 kg (50 lb) are for two people, common practice.
 * @example =TACK.PARCELWEIGHT(62,49,39,10,6000) gives 19.747
 * @example =TACK.PARCELWEIGHT(62,49,39,10,5000,1) gives 24
 * @example =TACK.PARCELWEIGHT(62,49,39,10,4000,0.5) gives 30
 * @example =TACK.PARCELWEIGHT(30,20,10,"4.2 kg",5000,0.1) gives 4.2
 * @example =TACK.PARCELWEIGHT(62,49,0,10,5000) fails height: "0" cannot be used; give a number above 0
 * @returns {any} The weight charged for.
 */
export function parcelweight(length: any, width: any, height: any, weight: any, divisor: any, roundUp?: any): any {
  const cm = ", in cm";
  const measures = numberArguments({ length, width, height, divisor }, ["length", "width", "height", "divisor"], {
    length: cm,
    width: cm,
    height: cm,
    divisor: ", such as 5000",
  });
  if (!measures.ok) return answer(measures);
  const loaded = needed(readWeight(weight, "weight"), "weight", "what the parcel weighs, such as 12 or 12 kg");
  if (!loaded.ok) return answer(loaded);
  const given = readNumber(roundUp, "roundUp", "a step in kg such as 0.5 or 1");
  if (!given.ok) return answer(given);
  const step = numberArguments({ roundUp: given.value ?? 0 }, []);
  if (!step.ok) return answer(step);
  const { grams, bareAmount } = loaded.value;
  const gramsPerKg = 1000;
  return answer(
    succeed(
      parcelWeight({
        ...measures.value,
        weight: bareAmount ?? grams! / gramsPerKg,
        roundUp: step.value.roundUp || null,
      }),
    ),
  );
}
