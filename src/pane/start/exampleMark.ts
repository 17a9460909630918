import { mark } from "../../../shared/start-tables.json";

/** What an example row says of itself in Note. */
export const exampleMark: string = mark;
