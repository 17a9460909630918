import { replaceBetween } from "../../src/build/replaceBetween.mjs";

test("only what stands between the markers is replaced", () => {
  const text = "a\n<!-- checks:begin -->\nold\n<!-- checks:end -->\nb\n";
  const fresh = "a\n<!-- checks:begin -->\n\nnew\n\n<!-- checks:end -->\nb\n";
  expect(replaceBetween(text, "checks", "new")).toBe(fresh);
  expect(replaceBetween(fresh, "checks", "new")).toBe(fresh);
});

test("a text without the markers is refused", () => {
  expect(() => replaceBetween("a", "checks", "new")).toThrow("<!-- checks:begin -->");
});
