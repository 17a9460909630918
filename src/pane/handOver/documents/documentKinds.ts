import { directionPage } from "./directionPage";
import { dueCalendar } from "./dueCalendar";
import type { HandOverDocument } from "./HandOverDocument";
import type { HandOverSource } from "./HandOverSource";
import { loanList } from "./loanList";
import { packingLists } from "./packingLists";
import { requestLetters } from "./requestLetters";
import { returnSlips } from "./returnSlips";
import { runSheet } from "./runSheet";
import { setCards } from "./setCards";

/** What can be handed over, and what has to be chosen for it. */
export interface DocumentKind {
  readonly id: string;
  readonly label: string;
  readonly about: string;
  readonly asksFor: readonly ("lender" | "day" | "bag limit" | "pictures")[];
  /** Whether it shows pictures of the workbook itself: never, always, or where that is wished. */
  readonly sheetPictures: "none" | "shown" | "asked";
  readonly make: (source: HandOverSource) => HandOverDocument;
}

/** In the order of the work: before, on the day, after. */
export const documentKinds: readonly DocumentKind[] = [
  {
    id: "request-letters",
    label: "Request letters",
    about: "A letter to each lender still to be asked, as text to copy or as mail drafts.",
    asksFor: ["lender"],
    sheetPictures: "none",
    make: requestLetters,
  },
  {
    id: "direction",
    label: "Direction page",
    about: "The job in words and pictures, look by look, for the team.",
    asksFor: ["pictures"],
    sheetPictures: "shown",
    make: directionPage,
  },
  {
    id: "run-sheet",
    label: "Run sheet",
    about: "The day’s looks with their times, as DAYPLAN has them.",
    asksFor: ["day"],
    sheetPictures: "none",
    make: runSheet,
  },
  {
    id: "set-cards",
    label: "Set cards",
    about: "The day’s looks in order as one file that works on a phone without a network.",
    asksFor: ["day", "pictures"],
    sheetPictures: "shown",
    make: setCards,
  },
  {
    id: "return-slips",
    label: "Return slips",
    about: "A slip for each lender with what comes back, its condition and who took it. Who wears what is left off.",
    asksFor: ["lender", "pictures"],
    sheetPictures: "asked",
    make: returnSlips,
  },
  {
    id: "packing-lists",
    label: "Packing lists",
    about: "What goes into each bag, and what it weighs.",
    asksFor: ["bag limit"],
    sheetPictures: "none",
    make: packingLists,
  },
  {
    id: "due-dates",
    label: "Due dates",
    about: "What is to go back and to be sent, as a file for a calendar.",
    asksFor: [],
    sheetPictures: "none",
    make: dueCalendar,
  },
  {
    id: "loan-list",
    label: "Pieces out",
    about: "Everything that is out, as values for another spreadsheet.",
    asksFor: [],
    sheetPictures: "none",
    make: loanList,
  },
];
