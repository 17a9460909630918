import type { Severity } from "../../checks/finding";

/** Everything that can happen within the Check view. */
export type CheckAction =
  | { readonly type: "severity toggled"; readonly severity: Severity }
  | { readonly type: "rule chosen"; readonly ruleId: string | null }
  | { readonly type: "filter cleared" }
  | { readonly type: "group opened"; readonly groupId: string; readonly isOpen: boolean }
  | { readonly type: "more shown"; readonly groupId: string; readonly shown: number }
  | { readonly type: "preview opened"; readonly groupId: string }
  | { readonly type: "preview closed" }
  | { readonly type: "ignore begun"; readonly findingId: string }
  | { readonly type: "reason typed"; readonly reason: string }
  | { readonly type: "ignore ended" };
