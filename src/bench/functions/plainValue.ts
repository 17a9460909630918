/** The bare value of an argument that may carry its number format. */
export function plainValue(argument: unknown): unknown {
  if (typeof argument !== "object" || argument === null) return argument;
  return (argument as { basicValue?: unknown }).basicValue;
}
