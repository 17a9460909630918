import { areaOfReference, type Area } from "../../sheet/areaOfReference";

/** Several references apart by spaces, as a sheet's lists and formats name them; what is no reference is left out. */
export function areasOfReference(references: string): Area[] {
  return references
    .trim()
    .split(/\s+/)
    .map(areaOfReference)
    .filter((area) => area !== null);
}
