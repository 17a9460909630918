import { sayCount } from "../../sayCount";
import type { DayLooks } from "../../today/DayLooks";
import type { LookPicture } from "../pictures/LookPicture";
import type { LookCard } from "./LookCard";

/** What the papers of looks lack, a sentence each; `isTimed` where they show times, `left` the pictures that belong to no look, null where none are shown. */
export function lookGaps(
  looks: DayLooks | null,
  cards: readonly LookCard[],
  isTimed: boolean,
  left: readonly LookPicture[] | null,
): readonly string[] {
  if (looks === null)
    return ["The workbook has no table of looks: a row of headings such as Look, Order, Talent makes one."];
  const gaps: string[] = [];
  if (looks.sentence !== null) gaps.push(looks.sentence);
  else if (isTimed && looks.call === null)
    gaps.push("No call is known for this day, so there are no times: type it under Today.");
  const named = (of: readonly LookCard[]): string => of.map(({ name }) => name).join(", ");
  const bare = cards.filter(({ pieces }) => pieces.length === 0);
  if (bare.length > 0) gaps.push(`No piece names ${sayCount(bare.length, "look", "looks")}: ${named(bare)}.`);
  if (left === null) return gaps;
  const unseen = cards.filter(
    ({ pictures, piecePictures, link }) => pictures.length + piecePictures.length === 0 && link === "",
  );
  if (unseen.length > 0 && unseen.length === cards.length)
    gaps.push(
      "No look has a picture: put one over its row on the sheet, or choose files named for their looks, such as look 7.jpg, or as the column Photo names them.",
    );
  else if (unseen.length > 0) gaps.push(`No picture for ${named(unseen)}.`);
  for (const { fileName } of left) gaps.push(`${fileName} belongs to no look: name it for one, such as look 7.jpg.`);
  return gaps;
}
