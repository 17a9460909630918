import type { Problem } from "./problem";

/**
 * A value, or the one reason why there is none.
 *
 * Nothing in the arithmetic throws: what cannot be computed comes back as a problem with its facts,
 * and the edge (a cell, the pane) says it in words.
 */
export type Outcome<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: Problem };
