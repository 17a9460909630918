import { IDependencyManagerService, IFunctionService } from "@univerjs/engine-formula";
import type { OpenGrid } from "../port/openGrid";

/**
 * Calculates everything anew after a table has got another size. The engine remembers what a table's name stood for
 * in each formula it has read, and goes on using it.
 */
export function calculateTableAnew({ grid, unitId, model }: OpenGrid, tableName: string): void {
  const injector = grid.univer.__getInjector();
  injector.get(IFunctionService).deleteFormulaAstCacheKey(tableName);
  const dependencies = injector.get(IDependencyManagerService);
  for (const sheet of model.getSheets()) dependencies.clearFormulaDependency(unitId, sheet.getSheetId());
  grid.api.getFormula().executeCalculation();
}
