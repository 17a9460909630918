import type { PaperBlock } from "../paper/Paper";
import { sayDay } from "../../sayDay";
import { sayList } from "../../sayList";
import type { HandOverDocument } from "./HandOverDocument";
import type { HandOverSource } from "./HandOverSource";
import { lookCards } from "./lookCards";
import { moodPictures } from "./moodPictures";
import { lookGaps } from "./lookGaps";
import { shootDays } from "./shootDays";

/** The direction of the job for the team: its words, then look by look who wears what, with the reference pictures. */
export function directionPage(source: HandOverSource): HandOverDocument {
  const { cards, left } = lookCards(source, true);
  const { job, stylist, direction, credit } = source.job;
  const moods = moodPictures(source);
  const days = shootDays(source.read);
  const blocks: PaperBlock[] = [
    {
      kind: "facts",
      facts: [
        ["Stylist", stylist],
        ["Days", sayList(days.map(sayDay))],
        ["Credit", credit],
      ],
    },
    ...(direction === "" ? [] : [{ kind: "text", text: direction } as const]),
    // Pictures that belong to no look are references for the job as a whole.
    ...[...left, ...moods].map(({ dataUrl, fileName }): PaperBlock => ({
      kind: "picture",
      dataUrl,
      says: `Reference, ${fileName}`,
    })),
    ...cards.flatMap((card): PaperBlock[] => [
      { kind: "heading", text: card.talent === "" ? card.name : `${card.name}, ${card.talent}` },
      {
        kind: "facts",
        facts: [
          ["Day", days.length > 1 && card.day !== null ? sayDay(card.day) : ""],
          ["Where", card.place],
          ["Pieces", card.pieces.join("; ")],
          ["Note", card.note],
          ["Photo", card.link],
        ],
      },
      ...card.pictures.map(({ dataUrl }): PaperBlock => ({ kind: "picture", dataUrl, says: card.name })),
      ...(card.piecePictures.length === 0 ? [] : [{ kind: "pictures", pictures: card.piecePictures } as const]),
    ]),
  ];
  const isNothing = cards.length === 0 && direction === "" && left.length === 0 && moods.length === 0;
  return {
    paper: {
      title: job === "" ? "Direction" : `Direction ${job}`,
      pages: isNothing ? [] : [{ title: job === "" ? "Direction" : `${job}: direction`, blocks }],
    },
    table: null,
    ownFile: null,
    missing: [
      ...(direction === "" ? ["The direction is not said: write it under The job."] : []),
      ...lookGaps(source.looks, cards, false, []),
    ],
  };
}
