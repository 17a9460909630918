import { currencyFromText } from "../sheet/currencyFromText";
import type { CheckedRow } from "./checkedRow";
import type { CheckFacts } from "./checkFacts";
import { textIn } from "./textIn";

/** The currency a row's Currency cell names (an ISO 4217 code, or a bare "$", "¥" or "kr"); null where blank or none that is known. */
export function currencyIn(row: CheckedRow, facts: CheckFacts): string | null {
  const text = textIn(row, "currency");
  return text === null ? null : facts.once("currency", text, () => currencyFromText(text));
}
