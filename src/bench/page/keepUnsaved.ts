import type { Desk } from "./openDesk";
import { dropKeptCopy } from "./dropKeptCopy";
import { writeKeptCopy } from "./writeKeptCopy";

const QUIET_MS = 1500;

export interface Unsaved {
  /** Something was changed. */
  readonly edited: () => void;
  /** All is saved, or another workbook was opened. */
  readonly settled: () => void;
  readonly any: () => boolean;
}

/**
 * Watches over changes that are not saved: warns before the page is left, and keeps a copy in this browser once the
 * user has paused, so that a reload or a crash loses nothing.
 */
export function keepUnsaved(desk: () => Desk, show: (unsaved: boolean) => void): Unsaved {
  let unsaved = false;
  let waiting: ReturnType<typeof setTimeout> | undefined;
  const keep = () => {
    const { bytes, fileName } = desk();
    void writeKeptCopy({ fileName: fileName(), bytes: bytes(true), keptAt: Date.now() });
  };
  addEventListener("beforeunload", (event) => {
    if (unsaved) event.preventDefault();
  });
  return {
    edited: () => {
      unsaved = true;
      show(true);
      clearTimeout(waiting);
      waiting = setTimeout(keep, QUIET_MS);
    },
    settled: () => {
      unsaved = false;
      show(false);
      clearTimeout(waiting);
      void dropKeptCopy();
    },
    any: () => unsaved,
  };
}
