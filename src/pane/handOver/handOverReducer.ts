import type { HandOverAction } from "./HandOverAction";
import type { HandOverState } from "./HandOverState";

/** 12 kg a bag is a figure to begin with: common practice, no source. The list itself warns where the lifting equation does. */
export const initialHandOverState: HandOverState = {
  kindId: "return-slips",
  lenderKey: null,
  day: null,
  paperSize: "A4",
  bagLimitTyped: "12 kg",
  pictures: [],
  isPictured: true,
  unreadFiles: [],
};

/** The view after something happened in it. A file picked again takes the place of the one of its name. */
export function handOverReducer(state: HandOverState, action: HandOverAction): HandOverState {
  switch (action.type) {
    case "kind chosen":
      return { ...state, kindId: action.kindId };
    case "lender chosen":
      return { ...state, lenderKey: action.lenderKey };
    case "day chosen":
      return { ...state, day: action.day };
    case "paper chosen":
      return { ...state, paperSize: action.paperSize };
    case "bag limit typed":
      return { ...state, bagLimitTyped: action.typed };
    case "pictures added": {
      const byName = new Map([...state.pictures, ...action.pictures].map((picture) => [picture.fileName, picture]));
      return { ...state, pictures: [...byName.values()], unreadFiles: action.unreadFiles };
    }
    case "pictures cleared":
      return { ...state, pictures: [], unreadFiles: [] };
    case "pictures wished":
      return { ...state, isPictured: action.isPictured };
  }
}
