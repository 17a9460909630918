import type { JobFacts } from "./JobFacts";
import { jobFields } from "./jobFields";

/** What was typed about the job, out of the text kept; what cannot be read was not typed. */
export function parseJob(text: string | null): Partial<JobFacts> {
  const kept = keptIn(text);
  return Object.fromEntries(
    jobFields.flatMap(({ field }) => {
      const typed = kept[field];
      return typeof typed === "string" ? [[field, typed]] : [];
    }),
  );
}

function keptIn(text: string | null): Partial<Record<string, unknown>> {
  if (text === null) return {};
  try {
    const kept = JSON.parse(text) as unknown;
    return typeof kept === "object" && kept !== null ? (kept as Partial<Record<string, unknown>>) : {};
  } catch {
    return {};
  }
}
