import type { ComponentType } from "react";

/**
 * One view of the pane: a folder of its own and one line in paneViews.
 *
 * A view is mounted when it is first chosen and then only hidden, so that its scroll place, focus and half-typed
 * texts survive a look at another one.
 */
export interface PaneView {
  readonly id: string;
  /** The word on its tab. */
  readonly label: string;
  readonly Icon: ComponentType;
  readonly View: ComponentType;
  /** A short count beside the word, such as how many findings are open. */
  readonly Count?: ComponentType;
  /** Its standing in a few words, read out by a screen reader whenever it changes. */
  readonly Standing?: ComponentType;
  /** The texts kept in the workbook that the view reads. */
  readonly keptKeys: readonly string[];
}
