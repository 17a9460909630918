import { escapeHtml } from "../paper/escapeHtml";
import { linkIn } from "../pictures/linkIn";
import { pictureSource } from "../paper/pictureSource";
import type { LookCard } from "./LookCard";
import { setCardsScript } from "./setCardsScript";
import { setCardsScriptHash } from "./setCardsScriptHash";
import { setCardsStyle } from "./setCardsStyle";

/** Only the page's own style, its one script and the pictures within it: a phone needs no network, and nothing a cell holds can run. */
const POLICY = `default-src 'none'; style-src 'unsafe-inline'; script-src '${setCardsScriptHash}'; img-src data:`;

/**
 * Cards of looks in shooting order as one page that works offline: a card fills the screen, the next look stands at its foot.
 *
 * `isPreview` leaves the script out, for a frame in which nothing may run.
 */
export function setCardsHtml(title: string, cards: readonly LookCard[], isPreview: boolean): string {
  const body = cards.map((card, at) => cardHtml(card, at, cards.length, cards[at + 1]));
  return (
    `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${POLICY}">` +
    `<meta name="viewport" content="width=device-width, initial-scale=1"><title>${escapeHtml(title)}</title>` +
    `<style>${setCardsStyle}</style></head><body><main aria-label="${escapeHtml(title)}">${body.join("")}</main>` +
    `${isPreview ? "" : `<script>${setCardsScript}</script>`}</body></html>`
  );
}

function cardHtml(card: LookCard, at: number, count: number, next: LookCard | undefined): string {
  const { name, talent, place, times, pieces, note, pictures, piecePictures, isShot } = card;
  const link = linkIn(card.link);
  const line = (style: string, text: string): string =>
    text === "" ? "" : `<p class="${style}">${escapeHtml(text)}</p>`;
  const images = pictures
    .map(({ dataUrl }) => pictureSource(dataUrl))
    .filter((source) => source !== "")
    .map((source) => `<img src="${source}" alt="${escapeHtml(name)}">`);
  const small = piecePictures.flatMap(({ dataUrl, says }) => {
    const source = pictureSource(dataUrl);
    if (source === "") return [];
    return [`<figure><img src="${source}" alt=""><figcaption>${escapeHtml(says)}</figcaption></figure>`];
  });
  const listed = pieces.map((piece) => `<li>${escapeHtml(piece)}</li>`);
  return (
    `<article tabindex="0" aria-label="${escapeHtml(`${name}, card ${at + 1} of ${count}`)}"><h1>${escapeHtml(name)}</h1>` +
    line("who", talent) +
    line("when", times === null ? "" : `Ready by ${times.readyBy} · shot ${times.shootFrom}–${times.shootUntil}`) +
    line("soft", times === null ? "" : `Change from ${times.changeFrom}`) +
    line("soft", [place, isShot ? "shot already" : ""].filter((part) => part !== "").join(" · ")) +
    images.join("") +
    (listed.length === 0 ? "" : `<ul>${listed.join("")}</ul>`) +
    (small.length === 0 ? "" : `<div class="small">${small.join("")}</div>`) +
    line("soft", note) +
    (link === "" ? "" : `<p class="soft"><a href="${escapeHtml(link)}" rel="noreferrer">Photo kept elsewhere</a></p>`) +
    `<p class="next">${nextHtml(at, next)}</p>` +
    `<p class="soft">${at + 1} of ${count}${at === 0 ? "" : ` · <a href="#" data-to="${at - 1}">back</a>`}</p></article>`
  );
}

function nextHtml(at: number, next: LookCard | undefined): string {
  if (next === undefined) return "Last look";
  const said = [next.name, next.talent, next.times === null ? "" : `ready by ${next.times.readyBy}`];
  return `<a href="#" data-to="${at + 1}">Next: ${escapeHtml(said.filter((part) => part !== "").join(", "))}</a>`;
}
