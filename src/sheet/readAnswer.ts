import type { FieldValue } from "../domain/fieldValue";
import type { RequestAnswer } from "../domain/loans/requestRow";
import { isUndecided } from "./isUndecided";
import { readScalar } from "./readScalar";

// Common practice, no source: how answers are noted, in the five languages of the headings.
const WAITING =
  /^(?:(?:still |a)?wait(?:ing|ed)?|pending|chas(?:e|ed|ing)|(?:re-?)?(?:asked|requested|e?-?mailed|called|messaged)|left (?:a )?(?:message|voicemail)|no (?:answer|reply|response|news|word)|(?:not|none|nothing) (?:yet|heard|sure)|maybe|perhaps|unsure|undecided|relance|en attente|attente|attend|sans (?:reponse|nouvelles?)|pas (?:de (?:reponse|nouvelles?|retour)|encore)|peut-?etre|(?:noch )?offen|wartet?|warten|steht aus|ausstehend|angefragt|noch nicht|keine (?:antwort|ruckmeldung)|vielleicht|(?:in )?attesa|sollecitat[oa]|nessuna risposta|non ancora|forse|pendiente|esperando|en espera|sin respuesta|todavia no|aun no|quizas?)\b/;
const NO =
  /^(?:no(?! (?:problem|worries|charge|fee))|nope|n|false|declin\w*|refus\w*|reject\w*|cancel\w*|unavailable|not (?:available|possible|this time)|(?:already|all) (?:out|gone|lent)|sold(?: out)?|out of stock|pass|non|indisponible|annule\w*|nein|abgelehnt|abgesagt|absage|nicht|leider|rifiut\w*|annullat\w*|rechaz\w*|agotad[oa]|cancelad[oa])\b|^[✗✘☒❌]/u;

/**
 * What the answer to a request comes to: "no" in its many wordings; "waiting", also for "tbc" and an unticked box; "given" for
 * yes, part, and whatever else is written. Blank (also 0) is null. Problem: error-in-cell.
 */
export function readAnswer(raw: unknown, argument: string): FieldValue<RequestAnswer> {
  const scalar = readScalar(raw, argument);
  if (!scalar.ok) return scalar.problem;
  const value = scalar.value;
  if (value === null || value === 0) return null;
  if (typeof value !== "string") return value === false ? "waiting" : "given";
  const plain = value
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase();
  if (WAITING.test(plain) || isUndecided(value)) return "waiting";
  return NO.test(plain) ? "no" : "given";
}
