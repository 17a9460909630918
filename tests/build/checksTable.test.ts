import { checksTable } from "../../src/build/checksTable.mjs";

test("checks stand gravest first, then by id", () => {
  const rule = (id: string, severity: string, fixable = false) => ({
    id,
    severity,
    fixable,
    about: `about ${id}`,
    why: "w",
  });
  const ids = checksTable([rule("b", "warning"), rule("c", "error", true), rule("a", "warning")]).match(/`\w`/g);
  expect(ids).toEqual(["`c`", "`a`", "`b`"]);
});
