import { sayProblem } from "../../domain/wording";
import { sayList } from "../sayList";
import { sayTermsRead } from "../sayTermsRead";
import { composeFormula } from "./composeFormula";
import type { ReferenceSurroundings } from "./evaluateReference";
import type { FunctionDoc } from "./FunctionDoc";
import { readArgument } from "./readArgument";

/** A call as far as it has been filled in. */
export interface ReadCall {
  /** The formula as far as it goes. */
  readonly formula: string;
  /** What is wrong with an argument, by its name. */
  readonly sentences: Readonly<Partial<Record<string, string>>>;
  /** What the words of an argument are read as, by its name: terms, which nobody may have to guess. */
  readonly readings: Readonly<Partial<Record<string, string>>>;
  /** Why the formula cannot be inserted yet, as one sentence, or null. */
  readonly unfinished: string | null;
  /** The arguments as a cell would hand them over, or null where they are not all known. */
  readonly values: readonly unknown[] | null;
  /** Why there is nothing to look at although the formula is whole, or null. */
  readonly unseen: string | null;
}

/** Reads all that was typed for a function's arguments. */
export function readCall(
  doc: FunctionDoc,
  texts: Readonly<Partial<Record<string, string>>>,
  surroundings: ReferenceSurroundings,
): ReadCall {
  const readings = doc.params.map((param) => readArgument(texts[param.name] ?? "", param, surroundings));
  const named = (kind: string) => doc.params.filter((_, place) => readings[place]?.kind === kind);
  const missing = named("blank").filter(({ optional }) => !optional);
  const wrong = named("wrong");
  const sentences: Partial<Record<string, string>> = {};
  const readAs: Partial<Record<string, string>> = {};
  doc.params.forEach(({ name }, place) => {
    const reading = readings[place];
    if (reading?.kind === "wrong") sentences[name] = reading.sentence;
    if (name !== "terms" || reading?.kind !== "known") return;
    const terms = sayTermsRead(reading.value, name);
    if (!terms.ok) sentences[name] = sayProblem(terms.problem);
    else if (terms.value !== null) readAs[name] = `Read as: ${terms.value}.`;
  });
  const unfinished =
    missing.length > 0
      ? `Still needed: ${sayList(missing.map(({ name }) => name))}.`
      : wrong.length > 0
        ? `Not right yet: ${sayList(wrong.map(({ name }) => name))}.`
        : null;
  const unknown = readings.find((reading) => reading.kind === "unknown");
  const isKnown = unfinished === null && unknown === undefined;
  const why = unknown?.kind === "unknown" ? unknown.why : null;
  return {
    formula: composeFormula(
      doc.id,
      readings.map((reading) => ("formula" in reading ? reading.formula : "")),
    ),
    sentences,
    readings: readAs,
    unfinished,
    values: isKnown ? readings.map((reading) => (reading.kind === "known" ? reading.value : null)) : null,
    unseen: unfinished === null && why !== null ? `The result shows once it is inserted: ${why}.` : null,
  };
}
