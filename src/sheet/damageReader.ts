import { saysDamage } from "./saysDamage";

/** saysDamage for the rows of one table, each pair of texts worked out once: the same few stand in all of them. */
export function damageReader(): typeof saysDamage {
  const known = new Map<string | null, Map<string, boolean>>();
  return (conditionOut, conditionBack) => {
    let byBack = known.get(conditionOut);
    if (byBack === undefined) known.set(conditionOut, (byBack = new Map()));
    let damaged = byBack.get(conditionBack);
    if (damaged === undefined) byBack.set(conditionBack, (damaged = saysDamage(conditionOut, conditionBack)));
    return damaged;
  };
}
