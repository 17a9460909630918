import type { WriteReceipt } from "../../sheet/cellEdit";
import type { OpenFinding } from "../check/OpenFinding";
import type { Notice } from "./Notice";
import type { ReadTables } from "./ReadTables";

/** Everything that can happen to the pane. */
export type PaneAction =
  | { readonly type: "view chosen"; readonly viewId: string }
  | { readonly type: "day chosen"; readonly asOf: number }
  | { readonly type: "day followed" }
  | { readonly type: "day turned"; readonly today: number }
  | { readonly type: "reading began" }
  | { readonly type: "reading ended" }
  | { readonly type: "workbook read"; readonly read: ReadTables }
  | { readonly type: "workbook checked"; readonly findings: readonly OpenFinding[] }
  | { readonly type: "told"; readonly kind: Notice["kind"]; readonly sentence: string }
  | { readonly type: "notice dismissed"; readonly id: number }
  | { readonly type: "step written"; readonly receipt: WriteReceipt }
  | { readonly type: "step put back"; readonly receipt: WriteReceipt }
  | { readonly type: "restore dismissed" }
  | { readonly type: "text kept"; readonly key: string; readonly text: string | null };
