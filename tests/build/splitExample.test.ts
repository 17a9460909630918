import { splitExample } from "../../src/build/splitExample.mjs";

test.each([
  ["=TACK.DUE(1) gives 2026-03-05", { formula: "=TACK.DUE(1)", gives: "2026-03-05", fails: null }],
  [
    '=TACK.DUE(DATE(2026,3,2),"a) gives b") fails c',
    { formula: '=TACK.DUE(DATE(2026,3,2),"a) gives b")', gives: null, fails: "c" },
  ],
  ['=TACK.DUE("say ""(""") gives {1,2;3,4}', { formula: '=TACK.DUE("say ""(""")', gives: "{1,2;3,4}", fails: null }],
])("%s is a formula and what it comes to", (example, split) => {
  expect(splitExample(example)).toEqual(split);
});

test.each(["TACK.DUE(1) gives 2", "=DUE(1) gives 2", "=TACK.DUE(1", "=TACK.DUE(1) is 2", "=TACK.DUE(1) gives ", ""])(
  "%j is no example",
  (example) => {
    expect(splitExample(example)).toBeNull();
  },
);
