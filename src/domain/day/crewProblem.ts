import type { Problem } from "../problem";
import type { Day } from "./day";
import { sayLook } from "./sayLook";

/** The problem where a look needs a dresser, a chair or a camera and there is none of them, or null. */
export function crewProblem(day: Day): Problem | null {
  const { crew, looks, changes } = day;
  const changed = [...changes.values()];
  const dressed = looks.find(
    (look) => look.changeMinutes > 0 || changed.some((minutesTo) => (minutesTo.get(look.key) ?? 0) > 0),
  );
  const needs = [
    { label: "dressers", howMany: crew.dressers, by: dressed, what: "has a change" },
    {
      label: "chairs",
      howMany: crew.chairs,
      by: looks.find((look) => look.hairMakeupMinutes > 0),
      what: "has hair and make-up",
    },
    { label: "cameras", howMany: crew.cameras, by: looks[0], what: "is to be shot" },
  ];
  const missing = needs.find(({ howMany, by }) => howMany < 1 && by !== undefined);
  if (missing === undefined) return null;
  const expected = `1 or more, since ${sayLook(missing.by!.label)} ${missing.what}`;
  return {
    reason: "argument-not-usable",
    facts: { argument: `people, ${missing.label}`, given: String(missing.howMany), expected },
  };
}
