import { literalText } from "../../src/excel/literalText";

test.each(["Maison Orla", "tbc", "élan", "to be collected, ask Ada"])("%s is handed over as it is", (text) => {
  expect(literalText(text)).toBe(text);
});

test.each([
  "007",
  "5 Mar 2026",
  "2026-03-05",
  "=A1",
  "+44 20",
  "-",
  "@home",
  "#N/A",
  "TRUE",
  "wahr",
  "'tis",
  "(2)",
  "£5",
  "look 3",
])("%s is kept from being read as something else", (text) => {
  expect(literalText(text)).toBe(`'${text}`);
});
