import fc from "fast-check";
import type { LookCard } from "../../../../src/pane/handOver/documents/LookCard";
import { setCardsHtml } from "../../../../src/pane/handOver/documents/setCardsHtml";

const cardOf = (text: string): LookCard => ({
  key: text,
  name: text,
  talent: text,
  day: null,
  place: text,
  isShot: true,
  times: { changeFrom: "08:00", readyBy: "08:20", shootFrom: "08:20", shootUntil: "08:45" },
  pieces: [text],
  note: text,
  pictures: [
    { fileName: text, dataUrl: "data:image/jpeg;base64,AAAA" },
    { fileName: text, dataUrl: text },
  ],
  piecePictures: [
    { says: text, dataUrl: "data:image/jpeg;base64,BBBB" },
    { says: text, dataUrl: text },
  ],
  link: text,
});
const tagsOf = (html: string): string[] =>
  [...html.replace(/<(style|script)>[\s\S]*?<\/\1>/g, "<$1>").matchAll(/<[^>]*>/g)].map(([tag]) =>
    tag.replace(/"[^"]*"/g, '""'),
  );

test("whatever a cell holds, the cards have the tags they have for a plain word", () => {
  const plain = tagsOf(setCardsHtml("x", [cardOf("x"), cardOf("x")], false));
  const hostile = fc
    .array(
      fc.oneof(
        fc.string(),
        fc.constantFrom("<script>", "</script>", "</style>", '"', "'", "<img onerror=x>", "javascript:"),
      ),
      { maxLength: 6 },
    )
    .map((parts) => `x${parts.join("")}`);
  fc.assert(
    fc.property(hostile, (text) => {
      expect(tagsOf(setCardsHtml(text, [cardOf(text), cardOf(text)], false))).toEqual(plain);
    }),
  );
});

test("a card says what is there and leaves out what is not", () => {
  const bare = {
    ...cardOf("Look 1"),
    talent: "",
    place: "",
    isShot: false,
    times: null,
    pieces: [],
    note: "",
    pictures: [],
    piecePictures: [],
    link: "",
  };
  const [, card] = setCardsHtml("Cards", [bare], true).split("<article");
  expect(card).not.toMatch(/class="who"|class="when"|<ul>|<img|null|undefined/);
  expect(card).toContain("Last look");
});

test("the page to be looked at in the pane has no script", () => {
  expect(setCardsHtml("Cards", [cardOf("x")], true)).not.toContain("<script");
});
