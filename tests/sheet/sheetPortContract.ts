import { buildingCases } from "./contract/buildingCases";
import type { ContractCase } from "./contract/contractCase";
import { keepingCases } from "./contract/keepingCases";
import { pictureCases } from "./contract/pictureCases";
import { readingCases } from "./contract/readingCases";
import { restoringCases } from "./contract/restoringCases";
import { tellingCases } from "./contract/tellingCases";
import { writingCases } from "./contract/writingCases";

/**
 * What every SheetPort promises, whichever host holds the workbook.
 *
 * Plain throws and no test runner, so that the same list runs in a browser page. Each case works on sheets of
 * its own, so that one workbook can serve them all; names are prefixed "Contract".
 */
export const sheetPortContract: readonly ContractCase[] = [
  ...readingCases,
  ...writingCases,
  ...restoringCases,
  ...buildingCases,
  ...keepingCases,
  ...pictureCases,
  ...tellingCases,
];
