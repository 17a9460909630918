/** A place on the earth, in degrees: north and east are above 0. */
export interface Place {
  readonly latitude: number;
  readonly longitude: number;
}
