type OwnFunction = (...args: unknown[]) => unknown;

/**
 * Keeps each function that the page's own functions.js hands to the host, so that the pane can show a result before a
 * formula is inserted: the host itself calculates only what stands in a cell. Runs before functions.js.
 */
export function keepFunctions(): ReadonlyMap<string, OwnFunction> {
  const kept = new Map<string, OwnFunction>();
  if (typeof CustomFunctions === "undefined" || typeof CustomFunctions.associate !== "function") return kept;
  const host = CustomFunctions as { associate: (...args: unknown[]) => unknown };
  const associate = host.associate.bind(host);
  host.associate = (...args) => {
    const [id, own] = args;
    if (typeof id === "string" && typeof own === "function") kept.set(id, own as OwnFunction);
    return associate(...args);
  };
  return kept;
}
