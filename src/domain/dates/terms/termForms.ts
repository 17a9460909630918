// Phrases as strings of the symbols of termSymbol.ts and termTokens.ts.
/** One day or working day, which needs no number: "day after the shoot". */
const ONE_DAY = "(?:D|WD|DW|B)";
const UNIT = "(?:C?[Dd]|[Dd]C|W[Dd]|[Dd]W|[Bb]|C?K|C?M|H)";
/** "shoot", "last shoot day", "end of the shoot", "último día de rodaje", "prise de vues". */
const SHOOT = "(?:[EL]P?)*(?:DP?)?S(?:P?S)*D?E?";
/** "collection", "day out", "receipt", "date of purchase". */
const OTHER_ANCHOR = "D?P?[OR]D?";
const ANCHOR = `(?:${SHOOT}|${OTHER_ANCHOR})`;
/** "after the shoot", "following wrap", "from receipt", "of receipt"; "3 days of shoot" may be how long it lasts, so "of" needs more. */
const TAIL = `(?:[AG]P?${ANCHOR}|P${OTHER_ANCHOR})`;

const form = (...phrases: string[]) => new RegExp(`^I?P?(?:${phrases.join("|")})$`);

/**
 * The forms terms take; each is one kind of answer. A phrase fits at most one.
 *
 * The anchor and the unit need not be caught: S stands for a shoot and W, B, K, Z, M, H for a unit wherever they occur.
 */
export const termForms = {
  span: form(
    // "3 working days", "30 days from receipt", "within 10 days of receipt", "after 7 days", "a fortnight"
    `A?n(?:${UNIT}|Z)${TAIL}?`,
    `Z${TAIL}?`,
    // "within 5 days of the shoot"
    `(?<=I)n${UNIT}P${SHOOT}`,
    // "2nd working day after wrap"
    `o${ONE_DAY}${TAIL}?`,
    // "day after the shoot", "jour ouvré suivant le tournage"
    `${ONE_DAY}${TAIL}`,
    // "shoot + 3 days", "after wrap 5 working days"
    `[AG]P?${ANCHOR}A?n${UNIT}`,
    `${ANCHOR}An${UNIT}`,
    // "next working day", "next wd", "jour ouvré suivant", "overnight", "lendemain du tournage"
    `(?:[XG](?:${ONE_DAY}|b)|${ONE_DAY}[XG]|V)(?:${TAIL}|P${ANCHOR})?`,
  ),
  /** "same day", "same day as the shoot", "on the day of the shoot" */
  sameDay: form(`(?:YD|DY|y)(?:P${ANCHOR})?`, `DPS`),
  /** "Friday", "following Monday", "Monday morning", "first Mon after wrap" */
  weekday: form(`o?G?FG?D?${TAIL}?`),
  /** "next Friday": this week's or next week's. */
  eitherWeekday: form(`XFD?${TAIL}?`, `FX`),
  monthEnd: form("Q", "EP?M", "ME"),
  nextMonthEnd: form("EP?[XG]M", "EP?M[XG]", "ME[XG]"),
  /** "5 March 2026", "Thu 5 de marzo de 2026", "2026-03-05" */
  date: form("F?P?[noN]P?[noN]P?nF?", "F?f"),
} as const;
