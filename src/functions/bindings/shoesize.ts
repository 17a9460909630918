import { fail } from "../../domain/fail";
import { needed } from "../../domain/needed";
import { footLengthMm } from "../../domain/prep/footLengthMm";
import { sizeOfFoot } from "../../domain/prep/sizeOfFoot";
import { succeed } from "../../domain/succeed";
import { readShoeSize } from "../../sheet/readShoeSize";
import { readShoeSystem } from "../../sheet/readShoeSystem";
import { answer } from "../answer";

/**
 * A shoe size in another system, by the length of the foot: approximate, as makers differ by half a size and more.
 *
 * @customfunction SHOESIZE
 * @family Carrying, preparing, running about
 * @answers Which size is that elsewhere?
 * @param size The size, such as 38, "38½" or "UK 7".
 * @param from The system it is in: "EU", "UK", "US men", "US women" or "Mondopoint" (foot length in mm).
 * @param to The system wanted: one of the same.
 * @shape One number: the nearest size, the smaller where two are as near.
 * @units Sizes to a half, Mondopoint to 5 mm. EU 1.5 x cm + 2; UK 3 x in - 23; US men UK + 1; US women UK + 2; all of the foot's length.
 * @blanks Any of them blank: #VALUE!.
 * @bounds Adults: EU 33.5 to 50, UK 1.5 to 15, US men 2.5 to 16, US women 3.5 to 17, Mondopoint 210 to 320.
 * @errors A size outside these, two sizes in one ("38-39"), "US" alone, M or W behind a size (they may be widths) unless from is a US system, and a size that names another system than from are #VALUE!.
 * @source Relations of an encyclopaedia's article on shoe size, read second-hand; Mondopoint is ISO 9407:2019. Within half a size of a table in the manner of ISO 19407:2023, not checked against the standard. Some makers put US women 1.5, not 1, above US men.
 * @caution Approximate: try shoes on before the day, and never make anyone work or walk in a pair that pinches or slips.
 * @example =TACK.SHOESIZE(38,"EU","UK") gives 5.5
 * @example =TACK.SHOESIZE("UK 7","UK","US women") gives 9
 * @example =TACK.SHOESIZE(270,"Mondopoint","EU") gives 42.5
 * @example =TACK.SHOESIZE("42½","EU","Mondopoint") gives 270
 * @example =TACK.SHOESIZE(60,"EU","UK") fails give a size from 33.5 to 50, as EU sizes of adults run
 * @example =TACK.SHOESIZE(8,"US","EU") fails give "EU", "UK", "US men"
 * @returns {any} The size in the other system.
 */
export function shoesize(size: any, from: any, to: any): any {
  const systems = '"EU", "UK", "US men", "US women" or "Mondopoint"';
  const given = needed(readShoeSystem(from, "from"), "from", systems);
  if (!given.ok) return answer(given);
  const wanted = needed(readShoeSystem(to, "to"), "to", systems);
  if (!wanted.ok) return answer(wanted);
  const typed = needed(readShoeSize(size, "size", given.value), "size", "a shoe size, such as 38");
  if (!typed.ok) return answer(typed);
  const { system } = typed.value;
  if (system !== null && system !== given.value) {
    const expected = `the system that size names, "${system}"`;
    return answer(fail("argument-not-usable", { argument: "from", given: given.value, expected }));
  }
  const foot = footLengthMm(typed.value.size, given.value, "size");
  return answer(foot.ok ? succeed(sizeOfFoot(foot.value, wanted.value)) : foot);
}
