import { inCopyStore } from "./inCopyStore";
import { keptCopyKey } from "./keptCopyKey";
import type { KeptCopy } from "./KeptCopy";

/** The copy that an earlier visit left behind, or null. */
export function readKeptCopy(): Promise<KeptCopy | null> {
  return inCopyStore("readonly", (store) => store.get(keptCopyKey)).then(
    (held) => (held as KeptCopy | undefined) ?? null,
  );
}
