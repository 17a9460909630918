import { join } from "node:path";

/** The function that a file of the bindings folder declares. */
export function bindingNamed(name: string): (...args: unknown[]) => unknown {
  // A file chosen by name at run time cannot be a static import.
  // eslint-disable-next-line @typescript-eslint/no-require-imports
  const module = require(join(__dirname, "../../src/functions/bindings", `${name}.ts`)) as Record<
    string,
    (...args: unknown[]) => unknown
  >;
  return module[name]!;
}
