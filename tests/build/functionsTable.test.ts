import type { FunctionDoc } from "../../src/build/functionDocs.mjs";
import { functionsTable } from "../../src/build/functionsTable.mjs";

const doc = (more: Partial<FunctionDoc>): FunctionDoc => ({
  id: "DUE",
  file: "due.ts",
  family: "Loans",
  answers: "When?",
  summary: "A date.",
  params: [],
  returnsTable: false,
  shape: "",
  units: "",
  blanks: "",
  bounds: "",
  errors: "",
  source: "",
  cautions: [],
  examples: [],
  ...more,
});

test("functions stand under their family, optional arguments in brackets, cautions below", () => {
  const params = [
    { name: "out", optional: false, matrix: false, text: "" },
    { name: "roll", optional: true, matrix: false, text: "" },
  ];
  expect(
    functionsTable([
      doc({ params, cautions: ["Ask."] }),
      doc({ id: "FIT", family: "Day", summary: "a | b" }),
      doc({ id: "LATE", cautions: ["Ask."] }),
    ]),
  ).toBe(
    [
      "### Day",
      "",
      "| function | answers | gives |",
      "| --- | --- | --- |",
      "| `TACK.FIT()` | When? | a \\| b |",
      "",
      "### Loans",
      "",
      "| function | answers | gives |",
      "| --- | --- | --- |",
      "| `TACK.DUE(out, [roll])` | When? | A date. |",
      "| `TACK.LATE()` | When? | A date. |",
      "",
      "- **Mind, DUE and LATE:** Ask.",
    ].join("\n"),
  );
});
