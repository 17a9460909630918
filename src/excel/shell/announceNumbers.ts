/** How this host takes a number together with its format, or undefined where it takes plain numbers alone. */
function numberCarrier(): "Double" | "FormattedNumber" | undefined {
  const { requirements } = Office.context;
  // ExcelApi 1.19 replaces the formatted number of CustomFunctionsRuntime 1.4, which stays for hosts in between.
  if (requirements.isSetSupported("ExcelApi", "1.19")) return "Double";
  if (requirements.isSetSupported("CustomFunctionsRuntime", "1.4")) return "FormattedNumber";
  return undefined;
}

/**
 * Sets globalThis.tackstitchNumbers, by which the functions know how to hand over a date.
 *
 * As a getter that asks the host when a function first reads it and then stands aside: a function can be called before
 * Office.onReady has told this page anything, and a date must not come out as a bare number just because it was early.
 */
export function announceNumbers(): void {
  Object.defineProperty(globalThis, "tackstitchNumbers", {
    configurable: true,
    get() {
      // Before Office.js knows its host there is nothing to ask; the next read asks again.
      if (typeof Office === "undefined" || !Office.context?.requirements) return undefined;
      const value = numberCarrier();
      Object.defineProperty(globalThis, "tackstitchNumbers", { configurable: true, writable: true, value });
      return value;
    },
  });
}
