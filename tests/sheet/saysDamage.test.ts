import { saysDamage } from "../../src/sheet/saysDamage";

test.each([
  "good",
  "Good condition",
  "very good",
  "OK",
  "O.K.",
  "okay",
  "all good",
  "all fine!",
  "perfect",
  "as new",
  "like new",
  "in good order",
  "clean and complete",
  "good, clean",
  "intact",
  "undamaged",
  "not damaged",
  "no damage",
  "no new marks",
  "No visible stains.",
  "without damage",
  "as before",
  "as out",
  "same as out",
  "unworn",
  "VGC",
  "none",
  "n/a",
  "-",
  "✓",
  "TRUE",
  "très bon état",
  "RAS",
  "comme neuf",
  "sans défaut",
  "sehr gut",
  "i.O.",
  "in Ordnung",
  "wie neu",
  "keine Schäden",
  "unbeschädigt",
  "ottime condizioni",
  "nessun danno",
  "buen estado, limpio",
  "muy bueno",
])("%j says that all is well", (back) => {
  expect(saysDamage("new", back)).toBe(false);
});

test.each([
  "torn",
  "torn hem",
  "stain on sleeve",
  "good, small stain",
  "good but worn",
  "not good",
  "no good",
  "not ok",
  "button missing",
  "one button missing, otherwise fine",
  "out of order",
  "damaged",
  "marks",
  "worn",
  "B",
  "3",
  "ok?",
  "?",
  "accroc",
  "tache au col",
  "Fleck",
  "strappato",
  "mancha",
])("%j tells of damage", (back) => expect(saysDamage("Good", back)).toBe(true));

test("the same words as on loan are no damage, whatever they say", () => {
  expect(saysDamage("Worn at heel", "worn at heel.")).toBe(false);
  expect(saysDamage("tache au col", "Tâche au col")).toBe(false);
  expect(saysDamage("worn at heel", "worn at heel and toe")).toBe(true);
});

test("a blank condition on loan leaves the return to speak for itself", () => {
  expect(saysDamage(null, "fine")).toBe(false);
  expect(saysDamage(null, "heel broken")).toBe(true);
});
