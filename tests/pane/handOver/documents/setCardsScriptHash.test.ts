import { createHash } from "node:crypto";
import { setCardsScript } from "../../../../src/pane/handOver/documents/setCardsScript";
import { setCardsScriptHash } from "../../../../src/pane/handOver/documents/setCardsScriptHash";

test("the policy of the set cards names the very script they have", () => {
  expect(setCardsScriptHash).toBe(`sha256-${createHash("sha256").update(setCardsScript).digest("base64")}`);
});
