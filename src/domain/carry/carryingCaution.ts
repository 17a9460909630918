/** Why a weight is not to be carried in one go. */
export interface CarryingCaution {
  readonly grams: number;
  /** The weight over what the revised lifting equation allows for soft bags in the easiest of lifts; above 1. */
  readonly liftIndex: number;
  /** Whether it is even above what stylists are known to carry, about 50 lb. */
  readonly isOverPractice: boolean;
}
