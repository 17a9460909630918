import { parseTerms } from "../../../../src/domain/dates/terms/parseTerms";
import { plainSpan } from "../../../../src/domain/dates/terms/plainSpan";

const UNITS = ["day", "days", "working day", "working days", "business days", "week", "weeks"];
const TAILS = ["", "after collection", "after shoot", "after the shoot", "after wrap", "from receipt", "of receipt"];

test("reads what the grammar reads, for every number of one to three figures that comes to no more than 999 days", () => {
  for (const unit of UNITS)
    for (const tail of [...TAILS, "from the receipt"])
      for (let count = 1; count <= (unit.startsWith("week") ? 142 : 999); count += tail === "" ? 1 : 37) {
        const phrase = `${count} ${unit} ${tail}`.trim();
        const span = plainSpan(phrase);
        expect(span).not.toBeNull();
        // A full stop says nothing, and keeps the phrase from being read at once.
        expect(parseTerms(`${phrase}.`)).toEqual({ ok: true, value: span });
      }
});

test.each([
  "0 days",
  "4000 days",
  "7",
  "7  days",
  "7 Days",
  " 7 days",
  "7 days after the party",
  "143 weeks",
  "7 days ",
  "-7 days",
  "7.5 days",
  "days",
  "",
])("leaves %j to the grammar", (text) => expect(plainSpan(text)).toBeNull());
