import { severities } from "./severities";
import type { CheckAction } from "./CheckAction";
import type { CheckState } from "./CheckState";

const everything = { severities: severities.map(({ id }) => id), ruleId: null };

/** The Check view as it opens: everything shown. */
export const initialCheckState: CheckState = {
  filter: everything,
  isOpen: {},
  shown: {},
  previewOf: null,
  ignoring: null,
};

/** The Check view after something happened in it. */
export function checkReducer(state: CheckState, action: CheckAction): CheckState {
  switch (action.type) {
    case "severity toggled": {
      const isShown = state.filter.severities.includes(action.severity);
      const severities = isShown
        ? state.filter.severities.filter((severity) => severity !== action.severity)
        : [...state.filter.severities, action.severity];
      return { ...state, filter: { ...state.filter, severities } };
    }
    case "rule chosen":
      // Who asks for one kind wants to see it, whatever its severity.
      return { ...state, filter: { severities: everything.severities, ruleId: action.ruleId } };
    case "filter cleared":
      return { ...state, filter: everything };
    case "group opened":
      return { ...state, isOpen: { ...state.isOpen, [action.groupId]: action.isOpen } };
    case "more shown":
      return { ...state, shown: { ...state.shown, [action.groupId]: action.shown } };
    case "preview opened":
      return { ...state, previewOf: action.groupId, isOpen: { ...state.isOpen, [action.groupId]: true } };
    case "preview closed":
      return { ...state, previewOf: null };
    case "ignore begun":
      return { ...state, ignoring: { findingId: action.findingId, reason: "" } };
    case "reason typed":
      return state.ignoring === null ? state : { ...state, ignoring: { ...state.ignoring, reason: action.reason } };
    case "ignore ended":
      return { ...state, ignoring: null };
  }
}
