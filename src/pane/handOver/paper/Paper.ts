import type { DocumentTable } from "./DocumentTable";

/** A picture as a data address, and what it shows. */
export interface PaperPicture {
  readonly dataUrl: string;
  readonly says: string;
}

/** One part of a page. All texts are plain; whoever sets them escapes them. */
export type PaperBlock =
  | { readonly kind: "heading"; readonly text: string }
  | { readonly kind: "text"; readonly text: string }
  /** Pairs of a word and what it says; a pair that says nothing is left out. */
  | { readonly kind: "facts"; readonly facts: readonly (readonly [word: string, says: string])[] }
  | { readonly kind: "table"; readonly caption: string; readonly table: DocumentTable }
  /** Lines to be written on by hand. */
  | { readonly kind: "lines"; readonly words: readonly string[] }
  | { readonly kind: "picture"; readonly dataUrl: string; readonly says: string }
  /** Small ones side by side, each over what it shows. */
  | { readonly kind: "pictures"; readonly pictures: readonly PaperPicture[] }
  | { readonly kind: "caution"; readonly text: string };

/** What begins a sheet of paper anew: one slip, one bag, one letter. Of a paper of cards, what is kept whole. */
export interface PaperPage {
  readonly title: string;
  readonly blocks: readonly PaperBlock[];
}

/** A document to be looked at and printed. */
export interface Paper {
  readonly title: string;
  readonly pages: readonly PaperPage[];
  /** Whether pages are cards, as many of which stand on a sheet of paper as have room; left out: each begins one. */
  readonly isCards?: boolean;
}
