import { isoFromSerial } from "../../../domain/dates/isoFromSerial";
import type { PaperBlock } from "../paper/Paper";
import type { HandOverDocument } from "./HandOverDocument";
import type { HandOverSource } from "./HandOverSource";
import type { LookCard } from "./LookCard";
import { lookCards } from "./lookCards";
import { lookGaps } from "./lookGaps";
import { setCardsHtml } from "./setCardsHtml";

/** Cards of the day's looks in shooting order: as one file for a phone, and on paper. */
export function setCards(source: HandOverSource): HandOverDocument {
  const { cards, left } = lookCards(source, false);
  const day = source.looks?.day ?? null;
  const title = `Set cards${day === null ? "" : ` ${isoFromSerial(day)}`}`;
  return {
    paper: {
      title,
      pages: cards.map((card, at) => ({ title: card.name, blocks: cardBlocks(card, cards[at + 1]) })),
      isCards: true,
    },
    table: null,
    ownFile:
      cards.length === 0
        ? null
        : {
            kind: "page",
            html: setCardsHtml(title, cards, false),
            preview: setCardsHtml(title, cards, true),
          },
    missing: lookGaps(source.looks, cards, true, left),
  };
}

function cardBlocks(card: LookCard, next: LookCard | undefined): readonly PaperBlock[] {
  const { talent, place, times, pieces, note, pictures, piecePictures, link, name } = card;
  return [
    {
      kind: "facts",
      facts: [
        ["Talent", talent],
        ["Where", place],
        ["Change from", times?.changeFrom ?? ""],
        ["Ready by", times?.readyBy ?? ""],
        ["Shot", times === null ? "" : `${times.shootFrom}–${times.shootUntil}`],
        ["Pieces", pieces.join("\n")],
        ["Note", note],
        ["Photo", link],
        ["Next", next === undefined ? "last look" : [next.name, next.talent].filter((part) => part !== "").join(", ")],
      ],
    },
    ...pictures.map(({ dataUrl }): PaperBlock => ({ kind: "picture", dataUrl, says: name })),
    ...(piecePictures.length === 0 ? [] : [{ kind: "pictures", pictures: piecePictures } as const]),
  ];
}
