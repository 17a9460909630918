import { hostError } from "./fakeWorkbook";

/** A method's answer, there once it was synced. */
export function answered<T>(queue: (command: () => void) => void, work: () => T): { readonly value: T } {
  let held: { readonly value: T } | undefined;
  queue(() => (held = { value: work() }));
  return {
    get value() {
      if (held === undefined) throw hostError("ValueNotLoaded", "The value of the result has not been loaded yet.");
      return held.value;
    },
  };
}
