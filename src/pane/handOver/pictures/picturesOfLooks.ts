import { lookKey } from "../../../sheet/lookKey";
import type { LookPicture } from "./LookPicture";

/** A look that pictures may belong to: its key, and what its Photo cell says. */
interface PicturedLook {
  readonly key: string;
  readonly photo: string;
}

const withoutEnding = (fileName: string): string => fileName.replace(/\.[A-Za-z0-9]{1,5}$/, "");

/**
 * Which pictures show which look, by the look's key: the file that its Photo cell names, else files named for the look ("look 07.jpg",
 * "7.png", "7 back.jpg"). What belongs to none is left over.
 */
export function picturesOfLooks(
  looks: readonly PicturedLook[],
  pictures: readonly LookPicture[],
): { readonly byLook: ReadonlyMap<string, readonly LookPicture[]>; readonly left: readonly LookPicture[] } {
  const byLook = new Map<string, LookPicture[]>();
  const left: LookPicture[] = [];
  for (const picture of pictures) {
    const name = withoutEnding(picture.fileName);
    const lower = picture.fileName.toLowerCase();
    const key =
      looks.find(({ photo }) => photo !== "" && lower === (photo.split(/[\\/]/).at(-1) ?? "").toLowerCase())?.key ??
      looks.find((look) => look.key === lookKey(name))?.key ??
      looks.find((look) => look.key === lookKey(leadingLook(name)))?.key;
    if (key === undefined) left.push(picture);
    else byLook.set(key, [...(byLook.get(key) ?? []), picture]);
  }
  return { byLook, left };
}

/** "look 7" of "look 7 back", "12a" of "12a_front". */
function leadingLook(name: string): string {
  return /^(?:look|tenue|outfit)?[\s_#-]*\d+[a-z]?(?=[\s_().-]|$)/i.exec(name)?.[0] ?? "";
}
