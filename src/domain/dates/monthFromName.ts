// English, French, Spanish, Italian, German; spelled without accents, as `plain` below leaves them.
const MONTH_NAMES: readonly string[] = [
  " january janvier enero gennaio januar janner",
  " february fevrier febrero febbraio februar feber",
  " march mars marzo marz maerz mrz",
  " april avril abril aprile",
  " may mai mayo maggio",
  " june juin junio giugno juni",
  " july juillet julio luglio juli",
  " august aout agosto",
  " september septembre septiembre setiembre settembre",
  " october octobre octubre ottobre oktober",
  " november novembre noviembre",
  " december decembre diciembre dicembre dezember",
];

/**
 * The month (1 to 12) of a lower-case name without accents or full stop, or null.
 *
 * A name may be cut short to three letters or more where that leaves one month in all five languages:
 * "jui" (juin or juillet) is null.
 */
export function monthFromName(name: string): number | null {
  if (name.length < 3 || name.includes(" ")) return null;
  const sought = ` ${name}`;
  let found: number | null = null;
  for (let index = 0; index < MONTH_NAMES.length; index += 1) {
    if (!MONTH_NAMES[index]!.includes(sought)) continue;
    if (found !== null) return null;
    found = index + 1;
  }
  return found;
}
