import { HostError } from "./HostError";

/** Puts the host's names in place and says that numbers carry their format; gives how to take them away again. */
export function standInHost(numbers: "Double" | "FormattedNumber" | undefined = undefined): () => void {
  const page = globalThis as unknown as Record<string, unknown>;
  const before = { CustomFunctions: page["CustomFunctions"], tackstitchNumbers: page["tackstitchNumbers"] };
  page["CustomFunctions"] = { Error: HostError, ErrorCode: { invalidValue: "#VALUE!", notAvailable: "#N/A" } };
  page["tackstitchNumbers"] = numbers;
  return () => Object.assign(page, before);
}
