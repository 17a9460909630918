import { useEffect, useState } from "react";
import { usePane } from "../frame/usePane";
import { showResult } from "./showResult";
import type { ShownResult } from "./ShownResult";

/** Typing goes on while a result would be worked out again for each letter. */
const WAIT_MS = 200;

/** What a call gives, shortly after the arguments have come to rest; null while there is nothing to show. */
export function useResultPreview(id: string, values: readonly unknown[] | null): ShownResult | null {
  const { callFunction } = usePane().actions;
  const [result, setResult] = useState<ShownResult | null>(null);
  useEffect(() => {
    setResult(null);
    if (values === null || callFunction === undefined) return undefined;
    const timer = setTimeout(() => setResult(showResult(() => callFunction(id, values))), WAIT_MS);
    return () => clearTimeout(timer);
  }, [id, values, callFunction]);
  return result;
}
