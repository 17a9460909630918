// English, French, Spanish, Italian, German; without accents. Monday first.
const WEEKDAY_NAMES: readonly string[] = [
  " monday lundi lunes lunedi montag mo ",
  " tuesday mardi martes martedi dienstag tu di ",
  " wednesday mercredi miercoles mercoledi mittwoch we mi ",
  " thursday jeudi jueves giovedi donnerstag th do ",
  " friday vendredi viernes venerdi freitag fr ",
  " saturday samedi sabado sabato samstag sonnabend sa ",
  " sunday dimanche domingo domenica sonntag su so do ",
];

/**
 * The weekdays (0 Monday to 6 Sunday) a lower-case name without accents or full stop can mean; empty when none.
 *
 * More than one where languages share a short form: "do" is a Thursday in German and a Sunday in Spanish.
 */
export function weekdaysFromName(name: string): readonly number[] {
  const found: number[] = [];
  if (name === "" || name.includes(" ")) return found;
  const sought = name.length < 3 ? ` ${name} ` : ` ${name}`;
  for (let weekday = 0; weekday < 7; weekday++) if (WEEKDAY_NAMES[weekday]!.includes(sought)) found.push(weekday);
  return found;
}
