import { readFlag } from "../../src/sheet/readFlag";
import { reads } from "./reads";

test.each([
  true,
  1,
  "1",
  "yes",
  "Yes!",
  "Y",
  "x",
  "X",
  "✓",
  "✔",
  "TRUE",
  "oui",
  "ja",
  "J",
  "sí",
  "Si",
  "done",
  "vrai",
  "wahr",
  "vero",
])("%j is yes", (raw) => expect(reads(readFlag(raw, "ready"))).toBe(true));

test.each([false, 0, "0", "no", "No.", "n", "-", "FALSE", "non", "nein", "✗", "falsch", "falso"])("%j is no", (raw) =>
  expect(reads(readFlag(raw, "ready"))).toBe(false),
);

test.each([null, undefined, "", " "])("%j is blank", (raw) => expect(reads(readFlag(raw, "ready"))).toBeNull());

test.each([2, "maybe", "yes and no", "5", -1, NaN])("%j is neither", (raw) =>
  expect(reads(readFlag(raw, "ready"))).toBe("argument-not-usable"),
);
