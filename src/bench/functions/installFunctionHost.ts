/** The error a binding throws, as the host's own class looks from a binding. */
class HostError extends Error {
  constructor(
    readonly code: string,
    message?: string,
  ) {
    super(message ?? code);
    this.name = "CustomFunctionsError";
  }
}

/**
 * Gives the page what Excel gives it, so that the bindings run the very same path: the error class with its codes, and
 * the word that a number may carry its format.
 */
export function installFunctionHost(): void {
  const host = {
    Error: HostError,
    ErrorCode: {
      invalidValue: "#VALUE!",
      notAvailable: "#N/A",
      divisionByZero: "#DIV/0!",
      invalidNumber: "#NUM!",
      nullReference: "#NULL!",
      invalidName: "#NAME?",
      invalidReference: "#REF!",
    },
  };
  Object.assign(globalThis, { CustomFunctions: host, tackstitchNumbers: "Double" });
}
