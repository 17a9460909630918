import { isoFromSerial } from "../isoFromSerial";
import type { Terms, TermsAnchor } from "./terms";

const WEEKDAYS = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"];
const AFTER: Readonly<Record<TermsAnchor, string>> = {
  out: "after collection",
  shoot: "after the shoot",
  receipt: "from the receipt",
};

/** Terms in plain words, such as "3 working days after the shoot"; parseTerms reads them back to the same terms. */
export function sayTerms(terms: Terms): string {
  switch (terms.kind) {
    case "date":
      return `by ${isoFromSerial(terms.day)}`;
    case "month end":
      return terms.monthsOn === 0 ? "end of the month" : "end of the following month";
    case "weekday":
      return `first ${WEEKDAYS[terms.weekday]} ${AFTER[terms.from]}`;
    default: {
      if (terms.count === 0) return terms.from === "out" ? "same day" : `same day as the ${terms.from}`;
      const unit = terms.count === 1 ? terms.kind.slice(0, -1) : terms.kind;
      return `${terms.count} ${unit}${terms.from === "out" ? "" : ` ${AFTER[terms.from]}`}`;
    }
  }
}
