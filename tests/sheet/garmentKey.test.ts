import { garmentKey } from "../../src/sheet/garmentKey";

test.each([
  ["Evening gown", "dress", true],
  ["hair", "hair", true],
  ["Hair up", "hair", true],
  ["Make-up", "make-up", true],
  ["maquillage", "make-up", true],
  ["hair clip", " hairclip", false],
  ["Harness", " harness", false],
])("%s is of the kind %j, known: %s", (text, kind, known) => {
  expect(garmentKey(text)).toEqual({ kind, known });
});
