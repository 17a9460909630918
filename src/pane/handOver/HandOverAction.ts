import type { PaperSize } from "./paper/PaperSize";
import type { LookPicture } from "./pictures/LookPicture";

/** Everything that can happen within the Hand over view. */
export type HandOverAction =
  | { readonly type: "kind chosen"; readonly kindId: string }
  | { readonly type: "lender chosen"; readonly lenderKey: string | null }
  | { readonly type: "day chosen"; readonly day: number }
  | { readonly type: "paper chosen"; readonly paperSize: PaperSize }
  | { readonly type: "bag limit typed"; readonly typed: string }
  | {
      readonly type: "pictures added";
      readonly pictures: readonly LookPicture[];
      readonly unreadFiles: readonly string[];
    }
  | { readonly type: "pictures cleared" }
  | { readonly type: "pictures wished"; readonly isPictured: boolean };
