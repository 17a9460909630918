import { nameKey } from "../../../sheet/nameKey";
import type { LookPicture } from "./LookPicture";

/** A piece that pictures may belong to: its number, and what its Photo cell says. */
interface PicturedPiece {
  readonly number: string;
  readonly photo: string;
}

const withoutEnding = (fileName: string): string => fileName.replace(/\.[A-Za-z0-9]{1,5}$/, "");

/**
 * The files picked by hand that show a piece: the one that its Photo cell names, else those named for its number ("P014.jpg", "P014
 * back.jpg", "piece 14.jpg"). A name that is a bare figure is a look's, and what shows a look may show who wears it.
 */
export function picturesOfPieces(
  { number, photo }: PicturedPiece,
  pictures: readonly LookPicture[],
): readonly LookPicture[] {
  const named = photo === "" ? "" : (photo.split(/[\\/]/).at(-1) ?? "").toLowerCase();
  const key = nameKey(number);
  return pictures.filter(({ fileName }) => {
    if (named !== "" && fileName.toLowerCase() === named) return true;
    if (key === "") return false;
    const name = withoutEnding(fileName);
    const ofPiece = /^(?:piece|item)[\s_#-]*([^\s_()]+)/i.exec(name)?.[1];
    if (ofPiece !== undefined) return nameKey(ofPiece) === key;
    return /\p{L}/u.test(key) && (nameKey(name) === key || nameKey(/^[^\s_()]+/.exec(name)?.[0] ?? "") === key);
  });
}
