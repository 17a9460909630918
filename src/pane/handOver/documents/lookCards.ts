import { clockSeconds } from "../../../domain/day/clockSeconds";
import type { Look } from "../../../domain/day/look";
import { looksInOrder } from "../../../domain/day/looksInOrder";
import { sayLook } from "../../../domain/day/sayLook";
import { lookKey } from "../../../sheet/lookKey";
import { readLooks } from "../../../sheet/readLooks";
import { readNeededPieces } from "../../../sheet/readNeededPieces";
import { sayClock } from "../../../domain/sayClock";
import { namePiece } from "../../today/namePiece";
import type { PaperPicture } from "../paper/Paper";
import { linkIn } from "../pictures/linkIn";
import { picturesOfLooks } from "../pictures/picturesOfLooks";
import { picturesOfRows } from "../pictures/picturesOfRows";
import type { LookPicture } from "../pictures/LookPicture";
import { cellText } from "../../cellText";
import type { HandOverSource } from "./HandOverSource";
import type { LookCard } from "./LookCard";

/**
 * The looks of the day chosen, or of every day, in shooting order, each with its times, its pieces and its pictures; and the pictures
 * that belong to none. The times are those of DAYPLAN. Empty where the workbook has no looks or they cannot be read.
 */
export function lookCards(
  source: HandOverSource,
  isEveryDay: boolean,
): { readonly cards: readonly LookCard[]; readonly left: readonly LookPicture[] } {
  const { read, looks: ofDay, pictures, sheetPictures } = source;
  const table = read.tables.find(({ kind, dataRows }) => kind === "looks" && dataRows.length > 0);
  const looks = table === undefined ? null : readLooks(table);
  if (table === undefined || looks?.ok !== true) return { cards: [], left: pictures };

  const rowOf = new Map(table.dataRows.map((row) => [lookKey(cellText(table, row, "look")), row]));
  const says = (look: Look, field: string): string => {
    const row = rowOf.get(look.key);
    return row === undefined ? "" : cellText(table, row, field);
  };
  const planned = new Map(ofDay?.plan?.looks.map((each) => [each.look.key, each]));
  const shown = isEveryDay
    ? [...looksInOrder(looks.value, clockSeconds(0))].sort((a, b) => (a.date ?? 0) - (b.date ?? 0))
    : (ofDay?.lines ?? []).flatMap(({ label }) => looks.value.find(({ key }) => key === lookKey(label)) ?? []);
  const pieces = piecesOf(source, looks.value);
  const overRows = picturesOfRows(table, sheetPictures);
  const { byLook, left } = picturesOfLooks(
    looks.value.map((look) => ({ key: look.key, photo: says(look, "photo") })),
    pictures,
  );
  const cards = shown.map((look) => {
    const plan = planned.get(look.key);
    const name = sayLook(look.label);
    return {
      key: look.key,
      name: `${name.charAt(0).toUpperCase()}${name.slice(1)}`,
      talent: look.talentText,
      day: look.date,
      place: [says(look, "set"), look.where ?? ""].filter((part) => part !== "").join(", "),
      isShot: look.shotAt !== null,
      times:
        plan === undefined
          ? null
          : {
              changeFrom: sayClock(plan.changeFrom),
              readyBy: sayClock(plan.readyBy),
              shootFrom: sayClock(plan.shootFrom),
              shootUntil: sayClock(plan.shootUntil),
            },
      pieces: pieces.get(look.key)?.names ?? [],
      note: says(look, "note"),
      // What was chosen by hand for this paper comes first.
      pictures: [...(byLook.get(look.key) ?? []), ...(overRows.get(rowOf.get(look.key) ?? -1) ?? [])],
      piecePictures: pieces.get(look.key)?.pictures ?? [],
      link: linkIn(says(look, "photo")),
    };
  });
  return { cards, left };
}

/** The pieces of a look, by name, and the pictures of them. */
interface LookPieces {
  readonly names: string[];
  readonly pictures: PaperPicture[];
}

function piecesOf({ pieces, sheetPictures }: HandOverSource, looks: readonly Look[]): ReadonlyMap<string, LookPieces> {
  const found = new Map<string, LookPieces>();
  for (const { table } of pieces) {
    const needed = readNeededPieces(table, looks);
    const overRows = picturesOfRows(table, sheetPictures);
    for (let index = 0; index < needed.count; index++) {
      const piece = needed.at(index);
      const name = namePiece(piece.row);
      for (const { key } of piece.looks) {
        let ofLook = found.get(key);
        if (ofLook === undefined) found.set(key, (ofLook = { names: [], pictures: [] }));
        ofLook.names.push(name);
        for (const { dataUrl } of overRows.get(piece.row.row) ?? []) ofLook.pictures.push({ dataUrl, says: name });
      }
    }
  }
  return found;
}
