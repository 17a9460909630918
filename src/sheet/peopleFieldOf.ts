import peopleLabels from "../../shared/people-labels.json";
import { nameKey } from "./nameKey";

/** What can be said of the people of a day. */
export type PeopleField = Exclude<keyof typeof peopleLabels, "source">;

const FIELDS: readonly PeopleField[] = [
  "dressers",
  "chairs",
  "cameras",
  "mealAfterHours",
  "mealMinutes",
  "crossingMinutes",
  "handOverMinutes",
];
const FIELD_OF: ReadonlyMap<string, PeopleField> = new Map(
  FIELDS.flatMap((field) => peopleLabels[field].split("|").map((label) => [nameKey(label), field] as const)),
);

/** What a label of the list of people stands for, case, spacing and punctuation ignored; undefined where it is not known. */
export function peopleFieldOf(label: string): PeopleField | undefined {
  return FIELD_OF.get(nameKey(label));
}
