import { readCoverLimit } from "../../src/sheet/readCoverLimit";
import { says } from "./says";

test("a limit is an amount above 0 and keeps its currency", () => {
  expect(readCoverLimit("£100,000", "limit")).toEqual({ ok: true, value: { amount: 100_000, currency: "GBP" } });
  expect(readCoverLimit(null, "limit")).toEqual({ ok: true, value: null });
  for (const raw of [0, -1]) expect(says(readCoverLimit(raw, "limit"))).toContain("give an amount above 0");
});
