import { useMemo } from "react";
import { usePane } from "../frame/usePane";
import { ignoredKey } from "./ignoredKey";
import { nameFindings } from "./nameFindings";
import { parseIgnored } from "./parseIgnored";
import { splitIgnored } from "./splitIgnored";

/** The findings as open and ignored, and the ignored entries as kept; null until the first check has ended. */
export function useSplitFindings() {
  const { findings, read, kept } = usePane().state;
  const text = kept[ignoredKey] ?? null;
  const { entries, unreadable } = useMemo(() => parseIgnored(text), [text]);
  const named = useMemo(
    () => (findings === null || read === null ? null : nameFindings(findings, read.tables)),
    [findings, read],
  );
  return useMemo(
    () => (named === null ? null : { ...splitIgnored(named, entries), entries, unreadable }),
    [named, entries, unreadable],
  );
}
