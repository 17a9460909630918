import { useMemo } from "react";
import { usePane } from "../frame/usePane";
import { ignoredKey } from "./ignoredKey";
import { parseIgnored } from "./parseIgnored";
import { splitIgnored } from "./splitIgnored";

/** The findings as open and ignored, and the ignored entries as kept; null until the first check has ended. */
export function useSplitFindings() {
  const { findings, kept } = usePane().state;
  const text = kept[ignoredKey] ?? null;
  const { entries, unreadable } = useMemo(() => parseIgnored(text), [text]);
  return useMemo(
    () => (findings === null ? null : { ...splitIgnored(findings, entries), entries, unreadable }),
    [findings, entries, unreadable],
  );
}
