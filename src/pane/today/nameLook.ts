import { sayLook } from "../../domain/day/sayLook";

/** A look by its number and who wears it, as a line begins with it: "Look 4, Adaeze". */
export function nameLook(label: string | number, talentText: string): string {
  const said = sayLook(label);
  return `${said.charAt(0).toUpperCase()}${said.slice(1)}${talentText === "" ? "" : `, ${talentText}`}`;
}
