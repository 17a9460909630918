import { createContext } from "react";

/** The time of day of the host's clock as a fraction of the day; null where the host gives the pane no clock. */
export const clockContext = createContext<(() => number) | null>(null);
