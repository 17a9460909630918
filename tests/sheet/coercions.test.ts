import fc from "fast-check";
import { readChoice } from "../../src/sheet/readChoice";
import { sayProblem } from "../../src/domain/wording";
import { readDate } from "../../src/sheet/readDate";
import { readDateTime } from "../../src/sheet/readDateTime";
import { readFlag } from "../../src/sheet/readFlag";
import { readMinutes } from "../../src/sheet/readMinutes";
import { readMoney } from "../../src/sheet/readMoney";
import { readNumber } from "../../src/sheet/readNumber";
import { readQuantity } from "../../src/sheet/readQuantity";
import { readText } from "../../src/sheet/readText";
import { readTimeOfDay } from "../../src/sheet/readTimeOfDay";
import { readWeight } from "../../src/sheet/readWeight";

const coercions = {
  readDate,
  readDateTime,
  readFlag,
  readMinutes,
  readMoney,
  readNumber,
  readQuantity,
  readText,
  readTimeOfDay,
  readWeight,
  readChoice: (raw: unknown, argument: string) => readChoice(raw, argument, ["calendar", "working"]),
};

/** Cells as hosts send them, things that look nearly like them, and anything else. */
const cells = fc.oneof(
  fc.anything({
    withNullPrototype: true,

    withBigInt: true,
    withDate: true,
    withTypedArray: true,
  }),
  fc.jsonValue(),
  fc.double(),
  fc.stringMatching(/^[-+(£€$ ]{0,2}[0-9.,'’ /:-]{0,12}[a-zäöü€ ]{0,6}\)?$/),
  fc.record(
    { type: fc.string(), basicValue: fc.anything(), code: fc.anything(), error: fc.anything() },
    { requiredKeys: [] },
  ),
);

test.each(Object.entries(coercions))(
  "%s never throws, and what it refuses it explains in one sentence",
  (_, coerce) => {
    fc.assert(
      fc.property(cells, (raw) => {
        const outcome = coerce(raw, "argument");
        if (outcome.ok) return;
        const sentence = sayProblem(outcome.problem);
        expect(sentence).toMatch(/^argument.*\.$/s);
        if (typeof raw !== "string") expect(sentence).not.toMatch(/undefined|\[object|NaN|\n/);
      }),
      { numRuns: 2000 },
    );
  },
);

test.each(Object.entries(coercions))("%s takes null, undefined, no text and spaces alone for blank", (_, coerce) => {
  for (const blank of [null, undefined, "", " ", "\u00a0", [[null]]])
    expect(coerce(blank, "argument")).toEqual({ ok: true, value: null });
});

test.each(Object.entries(coercions))("%s passes an error value on as error-in-cell", (_, coerce) => {
  for (const raw of [{ error: "#N/A" }, { code: "#N/A" }, { type: "Error", basicValue: "#N/A" }]) {
    expect(coerce(raw, "argument")).toEqual({
      ok: false,
      problem: { reason: "error-in-cell", facts: { argument: "argument", given: "#N/A" } },
    });
  }
});
