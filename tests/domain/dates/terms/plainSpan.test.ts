import { parseTerms } from "../../../../src/domain/dates/terms/parseTerms";
import { plainSpan } from "../../../../src/domain/dates/terms/plainSpan";

test("reads what the grammar reads, for every number of one to three figures", () => {
  for (let count = 1; count <= 999; count++)
    for (const unit of ["day", "days", "working day", "working days"]) {
      const span = plainSpan(`${count} ${unit}`);
      expect(span).not.toBeNull();
      // A full stop says nothing, and keeps the phrase from being read at once.
      expect(parseTerms(`${count} ${unit}.`)).toEqual({ ok: true, value: span });
    }
});

test.each([
  "0 days",
  "4000 days",
  "7",
  "7  days",
  "7 Days",
  " 7 days",
  "7 days after shoot",
  "-7 days",
  "7.5 days",
  "days",
  "",
])("leaves %j to the grammar", (text) => expect(plainSpan(text)).toBeNull());
