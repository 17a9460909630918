import { IUniverInstanceService, UniverInstanceType, type Workbook } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import type { FWorkbook } from "@univerjs/sheets/facade";
import type { Grid } from "../grid/createGrid";

/** The open workbook in the grid, as the port's parts need it. */
export interface OpenGrid {
  readonly grid: Grid;
  readonly unitId: string;
  readonly facade: FWorkbook;
  readonly model: Workbook;
  readonly formulas: FormulaDataModel;
}

export function openGrid(grid: Grid, unitId: string): OpenGrid {
  const injector = grid.univer.__getInjector();
  const facade = grid.api.getWorkbook(unitId);
  const model = injector.get(IUniverInstanceService).getUnit<Workbook>(unitId, UniverInstanceType.UNIVER_SHEET);
  if (facade === null || model === null || model === undefined) throw new Error(`No open workbook ${unitId}`);
  return { grid, unitId, facade, model, formulas: injector.get(FormulaDataModel) };
}
