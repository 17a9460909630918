import type { systems } from "../../../shared/shoe-sizes.json";

/** A way to number shoe sizes. */
export type ShoeSystem = keyof typeof systems;
