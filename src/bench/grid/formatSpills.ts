import { InterceptorEffectEnum } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/sheets";
import type { Grid } from "./createGrid";

/** The engine formats only the first cell of a spilled result; this shows the others in the format they came with. */
export function formatSpills({ univer }: Grid): void {
  const injector = univer.__getInjector();
  const formulas = injector.get(FormulaDataModel);
  injector.get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    priority: 99,
    effect: InterceptorEffectEnum.Value | InterceptorEffectEnum.Style,
    handler: (cell, { unitId, subUnitId, row, col, workbook }, next) => {
      const spilled = formulas.getArrayFormulaCellData()?.[unitId]?.[subUnitId]?.[row]?.[col];
      const style = spilled?.s;
      const pattern = typeof style === "object" ? style?.n?.pattern : undefined;
      if (pattern === undefined || cell === null || cell === undefined) return next(cell);
      const own = workbook.getStyles().getStyleByCell(cell);
      if (own?.n?.pattern !== undefined) return next(cell);
      return next({ ...cell, s: { ...own, n: { pattern } } });
    },
  });
}
