import fc from "fast-check";
import { safeFileName } from "../../../../src/pane/handOver/files/safeFileName";

test.each([
  ["Return slips 2026-04-07", "html", "Return slips 2026-04-07.html"],
  ["../../etc/passwd", "csv", "etc passwd.csv"],
  ["C:\\con", "csv", "C con.csv"],
  ["con", "csv", "hand-over con.csv"],
  ["COM1.txt", "csv", "hand-over COM1.txt.csv"],
  ["a\u202Egpj.exe", "csv", "a gpj.exe.csv"],
  ["   ", "ics", "hand-over.ics"],
  ["Maison Élan & Söhne", "eml", "Maison Élan Söhne.eml"],
])("%j is saved as %j: %j", (text, ending, name) => {
  expect(safeFileName(text, ending)).toBe(name);
});

test("any text gives a name that every system takes", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme", maxLength: 200 }), (text) => {
      const name = safeFileName(text, "csv");
      expect(name).toMatch(/^[\p{L}\p{M}\p{N}][\p{L}\p{M}\p{N} .-]*\.csv$/u);
      expect(name.slice(0, -4)).not.toMatch(/[ .]$|\.\.|^(?:con|prn|aux|nul|com\d|lpt\d)(?:\.|$)/i);
      expect(name.length).toBeLessThanOrEqual(200);
    }),
  );
});
