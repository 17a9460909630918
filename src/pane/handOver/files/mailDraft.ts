import { base64Text } from "./base64Text";
import { wellFormed } from "./wellFormed";

/** Letters, figures and the signs of RFC 5322 for a name, then a domain: more is not needed to fill in a draft, and nothing less is safe in a header. */
const ADDRESS = /^[\w.!#$%&'*+/=?^`{|}~-]{1,64}@[A-Za-z0-9-]{1,63}(?:\.[A-Za-z0-9-]{1,63})+$/;
/** An encoded word is at most 75 characters (RFC 2047, 2); 45 octets are 60 in base64, and 12 stand around them. */
const WORD_OCTETS = 45;
const LINE_LENGTH = 76;
/** A header line should not be longer than 78 characters (RFC 5322, 2.1.1). */
const PLAIN_SUBJECT = 60;

/** A letter as a draft that a mail program opens for sending; it is sent by whoever opens it, never by the pane. */
export interface MailDraft {
  /** "" where no address is known. */
  readonly to: string;
  readonly subject: string;
  readonly body: string;
}

/** A draft as a message file (RFC 5322), its text in UTF-8; an address that is none is left out. */
export function mailDraft({ to, subject, body }: MailDraft): string {
  const headers = [
    ...(ADDRESS.test(to) ? [`To: ${to}`] : []),
    `Subject: ${headerText(subject)}`,
    // Asked for by mail programs that would otherwise show a message file as one received.
    "X-Unsent: 1",
    "MIME-Version: 1.0",
    "Content-Type: text/plain; charset=utf-8",
    "Content-Transfer-Encoding: base64",
  ];
  const encoded = base64Text(wellFormed(body).replace(/\r\n|\r|\n/g, "\r\n"));
  const lines = encoded.match(new RegExp(`.{1,${LINE_LENGTH}}`, "g")) ?? [];
  return [...headers, "", ...lines, ""].join("\r\n");
}

/** A text for a header: one line, in encoded words (RFC 2047) where it is more than plain letters. */
function headerText(text: string): string {
  const line = wellFormed(text).replace(/\s+/g, " ").trim();
  if (/^[\x20-\x7E]*$/.test(line) && !line.includes("=?") && line.length <= PLAIN_SUBJECT) return line;
  const encoder = new TextEncoder();
  const words: string[] = [];
  let word = "";
  for (const character of line) {
    if (encoder.encode(word + character).length > WORD_OCTETS) {
      words.push(word);
      word = "";
    }
    word += character;
  }
  return [...words, word].map((each) => `=?utf-8?B?${base64Text(each)}?=`).join("\r\n ");
}
