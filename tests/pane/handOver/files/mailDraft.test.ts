import fc from "fast-check";
import { mailDraft } from "../../../../src/pane/handOver/files/mailDraft";
import { mailAddressIn } from "../../../../src/pane/handOver/files/mailAddressIn";

const parts = (draft: string) => {
  const at = draft.indexOf("\r\n\r\n");
  return { headers: draft.slice(0, at).replace(/\r\n /g, "\n ").split("\r\n"), body: draft.slice(at + 4) };
};
const bodyOf = (draft: string): string =>
  Buffer.from(parts(draft).body.replaceAll("\r\n", ""), "base64").toString("utf8");
/** A header's encoded words, decoded as RFC 2047 (6.2) has it: the space between two of them does not count. */
const subjectOf = (draft: string): string =>
  parts(draft)
    .headers.find((line) => line.startsWith("Subject: "))!
    .slice("Subject: ".length)
    .replace(/\?=\s+=\?/g, "?==?")
    .replace(/=\?utf-8\?B\?([^?]*)\?=/g, (_, words: string) => Buffer.from(words, "base64").toString("latin1"))
    .replace(/[\u0080-\u00FF]+/g, (octets) => Buffer.from(octets, "latin1").toString("utf8"));

test("a plain draft can be read by eye", () => {
  expect(mailDraft({ to: "ines@halden.example", subject: "Loan request", body: "Dear Ines,\n\nhello" })).toBe(
    "To: ines@halden.example\r\nSubject: Loan request\r\nX-Unsent: 1\r\nMIME-Version: 1.0\r\n" +
      "Content-Type: text/plain; charset=utf-8\r\nContent-Transfer-Encoding: base64\r\n\r\n" +
      "RGVhciBJbmVzLA0KDQpoZWxsbw==\r\n",
  );
});

const hostile = fc
  .array(
    fc.oneof(
      fc.string({ unit: "grapheme" }),
      fc.constantFrom("\r\n", "\n", "\r", "Bcc: all@example.org", "=?utf-8?B?", "é", "😀", "\u0000"),
    ),
    { maxLength: 30 },
  )
  .map((all) => all.join(""));

test("no cell adds a header, no line is longer than mail allows, and nothing of the letter is lost", () => {
  fc.assert(
    fc.property(hostile, hostile, hostile, (to, subject, body) => {
      const draft = mailDraft({ to, subject, body });
      const { headers } = parts(draft);
      expect(headers.map((line) => line.split(":")[0])).toEqual([
        ...(headers[0]!.startsWith("To:") ? ["To"] : []),
        "Subject",
        "X-Unsent",
        "MIME-Version",
        "Content-Type",
        "Content-Transfer-Encoding",
      ]);
      for (const line of draft.split("\r\n")) {
        expect(line).toMatch(/^[\x20-\x7E]*$/);
        expect(line.length).toBeLessThanOrEqual(78 + "Subject: ".length);
      }
      const clean = (text: string): string => text.replace(/[^\P{Cc}\r\n\t]/gu, "");
      const withoutC1 = (text: string): string => text.replace(/[\u0080-\u009F]/g, "");
      expect(withoutC1(bodyOf(draft))).toBe(clean(body).replace(/\r\n|\r|\n/g, "\r\n"));
      expect(withoutC1(subjectOf(draft))).toBe(clean(subject).replace(/\s+/g, " ").trim());
    }),
    { numRuns: 300 },
  );
});

test.each(["a@b", "a@b.example\r\nBcc: c@d.example", "a b@c.example", "a@b.example, c@d.example", "<a@b.example>", ""])(
  "%j is no address, and the draft is left without one",
  (to) => {
    expect(mailDraft({ to, subject: "s", body: "b" })).not.toContain("To:");
  },
);

test.each([
  ["Ines <ines@halden.example>, 2nd floor", "ines@halden.example"],
  ["front desk", ""],
  ["call 555 or mail press.office+loans@velter.example.", "press.office+loans@velter.example"],
])("the address in %j is %j", (text, address) => {
  expect(mailAddressIn(text)).toBe(address);
});
