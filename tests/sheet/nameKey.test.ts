import { nameKey } from "../../src/sheet/nameKey";

test.each([
  ["Maison Orla", "maison orla"],
  ["Maison Orla", "MAISON-ORLA"],
  ["Maison Orla", " Maison  Orla "],
  ["Maison Orla", "Maison Orla."],
  ["Hélène & Fils", "Helene Fils"],
  ["Orla's", "Orlas"],
  ["Ｏｒｌａ", "Orla"],
])("%s and %s are one name", (one, other) => expect(nameKey(one)).toBe(nameKey(other)));

test.each([
  ["Maison Orla", "Maison Ola"],
  ["Studio 1", "Studio 2"],
  ["Orla", "Orla Press"],
  ["Ада", "Ara"],
])("%s and %s are two", (one, other) => expect(nameKey(one)).not.toBe(nameKey(other)));

test.each(["", "  ", "-", "?!"])("%j is no name", (text) => expect(nameKey(text)).toBe(""));
