import { readAnswer } from "../../src/sheet/readAnswer";

const read = (raw: unknown): unknown => readAnswer(raw, "Answer, row 2");

test.each([
  "yes",
  "Yes, all",
  "part",
  "Part: the two coats",
  "ok",
  "confirmed",
  "held until Friday",
  "No problem, collect Tue",
  "collect Tue",
  "sent",
  "oui",
  "Pas de problème",
  "ja",
  "kein Problem",
  "sì",
  "sí",
  true,
  3,
])("%j is an answer by which something is lent", (raw) => expect(read(raw)).toBe("given"));

test.each([
  "no",
  "No.",
  "NO - already out",
  "n",
  "no, sorry",
  "declined",
  "refused",
  "not available",
  "unavailable",
  "already out",
  "sold",
  "✗",
  "non",
  "refusé",
  "indisponible",
  "nein",
  "leider nicht",
  "abgesagt",
  "rifiutato",
  "rechazado",
  "agotado",
])("%j is no", (raw) => expect(read(raw)).toBe("no"));

test.each([
  "waiting",
  "Still waiting",
  "awaiting reply",
  "pending",
  "chased 3 March",
  "emailed again",
  "left message",
  "no answer",
  "no reply yet",
  "not yet",
  "not sure",
  "tbc",
  "?",
  "-",
  "maybe",
  "en attente",
  "sans réponse",
  "pas encore",
  "pas de réponse",
  "offen",
  "noch nicht",
  "in attesa",
  "nessuna risposta",
  "pendiente",
  "sin respuesta",
  false,
])("%j is no answer yet", (raw) => expect(read(raw)).toBe("waiting"));

test.each([null, undefined, "", "  ", 0])("%j is blank", (raw) => expect(read(raw)).toBeNull());

test("an error value is a problem that names the cell", () => {
  expect(read({ type: "Error", basicValue: "#REF!" })).toEqual({
    reason: "error-in-cell",
    facts: { argument: "Answer, row 2", given: "#REF!" },
  });
});
