import fc from "fast-check";
import type { Paper } from "../../../../src/pane/handOver/paper/Paper";
import { paperHtml } from "../../../../src/pane/handOver/paper/paperHtml";
import { escapeHtml } from "../../../../src/pane/handOver/paper/escapeHtml";

const paperOf = (text: string): Paper => ({
  title: text,
  pages: [
    {
      title: text,
      blocks: [
        { kind: "heading", text },
        { kind: "text", text },
        { kind: "caution", text },
        { kind: "facts", facts: [[text, text]] },
        { kind: "table", caption: text, table: { headings: [text, "Value"], rows: [[text, 1.5]] } },
        { kind: "lines", words: [text] },
        { kind: "picture", dataUrl: text, says: text },
        { kind: "picture", dataUrl: "data:image/jpeg;base64,AAAA", says: text },
      ],
    },
  ],
});
/** The tags of a page with their attributes' values left out. */
const tagsOf = (html: string): string[] => [...html.matchAll(/<[^>]*>/g)].map(([tag]) => tag.replace(/"[^"]*"/g, '""'));

const hostile = fc
  .array(
    fc.oneof(
      fc.string(),
      fc.constantFrom(
        "<script>alert(1)</script>",
        '"',
        "'",
        "<",
        ">",
        "&amp;",
        "</style>",
        "<img src=x onerror=alert(1)>",
        "]]>",
        "-->",
        "javascript:",
      ),
    ),
    { maxLength: 6 },
  )
  .map((parts) => `x${parts.join("")}`);

test("whatever a cell holds, the page has the tags it has for a plain word", () => {
  const plain = tagsOf(paperHtml(paperOf("x"), "A4"));
  fc.assert(
    fc.property(hostile, (text) => {
      expect(tagsOf(paperHtml(paperOf(text), "A4"))).toEqual(plain);
    }),
    { numRuns: 300 },
  );
});

test("a picture counts only when the page itself holds it, so that nothing is fetched", () => {
  const html = paperHtml(paperOf("https://elsewhere.example/a.jpg"), "A4");
  expect([...html.matchAll(/<img src="([^"]*)"/g)].map(([, source]) => source)).toEqual([
    "data:image/jpeg;base64,AAAA",
  ]);
  expect(html).toContain("default-src 'none'");
});

test("the page is made for the paper chosen", () => {
  expect(paperHtml(paperOf("x"), "A4")).toContain("size: A4");
  expect(paperHtml(paperOf("x"), "Letter")).toContain("size: letter");
});

test("facts that say nothing are left out", () => {
  const html = paperHtml(
    { title: "t", pages: [{ title: "t", blocks: [{ kind: "facts", facts: [["Job", ""]] }] }] },
    "A4",
  );
  expect(html).not.toContain("<dl>");
});

test("the five signs that mean something in HTML are written as entities", () => {
  expect(escapeHtml(`<a href="x">'&'</a>`)).toBe("&lt;a href=&quot;x&quot;&gt;&#39;&amp;&#39;&lt;/a&gt;");
});
