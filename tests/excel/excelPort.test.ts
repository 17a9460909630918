import { createExcelPort } from "../../src/excel/excelPort";
import type { Probe } from "../sheet/contract/contractCase";
import { sheetPortContract } from "../sheet/sheetPortContract";
import { createFakeWorkbook } from "./fakeWorkbook";
import { installStrictExcel } from "./strictExcel";
import { strictProbe } from "./strictProbe";

// Tables can only be widened, merged blocks, spilled results and new names of sheets can only be told from these sets on; see writeStep and onChange.
const NEEDED: Readonly<Record<string, string>> = { merge: "1.13", widens: "1.13", renameSheet: "1.17" };

describe.each(["1.9", "1.20"])("the Excel adapter on a host with ExcelApi %s", (excelApi) => {
  for (const { title, needs = [], run } of sheetPortContract) {
    const cannot = needs.filter((need) => Number(NEEDED[need]?.split(".")[1] ?? 0) > Number(excelApi.split(".")[1]));
    if (cannot.length > 0) {
      test.skip(`${title} (such a host cannot tell: ${cannot.join(", ")})`, () => undefined);
      continue;
    }
    test(title, async () => {
      const workbook = createFakeWorkbook();
      const excel = installStrictExcel(workbook, excelApi);
      try {
        const probe: Probe = strictProbe(workbook, excel);
        await run(createExcelPort(), probe);
      } finally {
        excel.uninstall();
      }
    });
  }
});
