import type { EngineFunction } from "../grid/createGrid";
import type { ErrorSentences } from "./createErrorSentences";
import { engineFunction } from "./engineFunction";
import type { FunctionMetadata } from "./FunctionMetadata";
import type { BlankHabit } from "./hostArgument";
import { sortCorrection } from "./sortCorrection";
import { workdayIntlCorrection } from "./workdayIntlCorrection";

export interface Functions {
  readonly namespace: string;
  readonly metadata: readonly FunctionMetadata[];
  readonly functionOf: Readonly<Record<string, (...args: unknown[]) => unknown>>;
  readonly blank: () => BlankHabit;
  readonly sentences: ErrorSentences;
}

/** Our functions, and corrections of two of the engine's own, as the engine takes them. */
export function engineFunctions({ namespace, metadata, functionOf, blank, sentences }: Functions): EngineFunction[] {
  const own = metadata.map((entry): EngineFunction => {
    const run = functionOf[entry.id];
    if (run === undefined) throw new Error(`No binding for ${entry.id}`);
    return [engineFunction({ metadata: entry, run, blank, sentences }), `${namespace}.${entry.name}`];
  });
  const scalar = (name: string, optional = true) => ({ name, optional });
  const range = (name: string, optional = false) => ({ name, optional, dimensionality: "matrix" as const });
  const correct = (run: (...args: never[]) => unknown, parameters: FunctionMetadata["parameters"]) =>
    engineFunction({
      metadata: { parameters },
      run: run as (...args: unknown[]) => unknown,
      blank: () => null,
      sentences: null,
    });
  return [
    ...own,
    [correct(sortCorrection, [range("array"), scalar("index"), scalar("order"), scalar("by column")]), "SORT"],
    [
      correct(workdayIntlCorrection, [
        scalar("start", false),
        scalar("days", false),
        scalar("weekend"),
        range("holidays", true),
      ]),
      "WORKDAY.INTL",
    ],
  ];
}
