import type { ContractCase } from "./contractCase";
import { same, must } from "./contractSteps";

/** What a port promises about text kept in the workbook. */
export const keepingCases: readonly ContractCase[] = [
  {
    title: "keeps text in the workbook under a key, overwrites it, and knows no other key",
    async run(port) {
      const key = "contract.kept";
      const text = JSON.stringify({ columns: "value=Ins. amt", quote: "\"'<&é\u2028" });
      must(await port.writeKept(key, "first"), "keeping");
      must(await port.writeKept(key, text), "keeping again");
      same(must(await port.readKept(key), "reading what was kept"), text, "what was kept");
      same(must(await port.readKept("contract.never"), "reading an unknown key"), null, "an unknown key");
    },
  },
];
