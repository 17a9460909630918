import type { Rule } from "./rule";
import { afterInCircle } from "./rules/afterInCircle";
import { alterationNotUndone } from "./rules/alterationNotUndone";
import { backInFuture } from "./rules/backInFuture";
import { bagOverLimit } from "./rules/bagOverLimit";
import { bagTooHeavy } from "./rules/bagTooHeavy";
import { columnNotRead } from "./rules/columnNotRead";
import { coverPassed } from "./rules/coverPassed";
import { currencyDisagrees } from "./rules/currencyDisagrees";
import { currencyMissing } from "./rules/currencyMissing";
import { currencyMisspelt } from "./rules/currencyMisspelt";
import { cutOffBeforeOpening } from "./rules/cutOffBeforeOpening";
import { dateAsText } from "./rules/dateAsText";
import { dateFarOff } from "./rules/dateFarOff";
import { dateNotRead } from "./rules/dateNotRead";
import { datesOutOfOrder } from "./rules/datesOutOfOrder";
import { dateSystem1904 } from "./rules/dateSystem1904";
import { dateTwoReadings } from "./rules/dateTwoReadings";
import { dateUndecided } from "./rules/dateUndecided";
import { dayOverWrap } from "./rules/dayOverWrap";
import { depositNotBack } from "./rules/depositNotBack";
import { doorOpenOvernight } from "./rules/doorOpenOvernight";
import { dueMissing } from "./rules/dueMissing";
import { dueOnClosedDay } from "./rules/dueOnClosedDay";
import { durationAsTime } from "./rules/durationAsTime";
import { durationNotRead } from "./rules/durationNotRead";
import { formulaError } from "./rules/formulaError";
import { keptNotRead } from "./rules/keptNotRead";
import { lateFeeNotRead } from "./rules/lateFeeNotRead";
import { lateNotBack } from "./rules/lateNotBack";
import { lenderCellNotRead } from "./rules/lenderCellNotRead";
import { lenderLikelyMisspelt } from "./rules/lenderLikelyMisspelt";
import { lenderListedTwice } from "./rules/lenderListedTwice";
import { lenderMissing } from "./rules/lenderMissing";
import { lenderNotListed } from "./rules/lenderNotListed";
import { lenderWrittenTwoWays } from "./rules/lenderWrittenTwoWays";
import { lookMinutesMissing } from "./rules/lookMinutesMissing";
import { lookNotListed } from "./rules/lookNotListed";
import { lookNumberTwice } from "./rules/lookNumberTwice";
import { lookOrderGap } from "./rules/lookOrderGap";
import { lookOrderImpossible } from "./rules/lookOrderImpossible";
import { lookOrderTwice } from "./rules/lookOrderTwice";
import { lookPieceNotThere } from "./rules/lookPieceNotThere";
import { lookTalentDisagrees } from "./rules/lookTalentDisagrees";
import { lookWithoutPieces } from "./rules/lookWithoutPieces";
import { lookWithoutShoes } from "./rules/lookWithoutShoes";
import { mealLate } from "./rules/mealLate";
import { minutesOutOfOrder } from "./rules/minutesOutOfOrder";
import { numberNegative } from "./rules/numberNegative";
import { pieceInTwoLooks } from "./rules/pieceInTwoLooks";
import { pieceNumberTwice } from "./rules/pieceNumberTwice";
import { quantityBackMissing } from "./rules/quantityBackMissing";
import { quantityBackNoDay } from "./rules/quantityBackNoDay";
import { quantityBackTooMany } from "./rules/quantityBackTooMany";
import { quantityBackZero } from "./rules/quantityBackZero";
import { quantityNotRead } from "./rules/quantityNotRead";
import { refundTooLarge } from "./rules/refundTooLarge";
import { refundWindowEnds } from "./rules/refundWindowEnds";
import { requestNotCollected } from "./rules/requestNotCollected";
import { requestToChase } from "./rules/requestToChase";
import { returnNoDay } from "./rules/returnNoDay";
import { returnNotProved } from "./rules/returnNotProved";
import { settledAndBack } from "./rules/settledAndBack";
import { settledNotUnderstood } from "./rules/settledNotUnderstood";
import { solesNotTaped } from "./rules/solesNotTaped";
import { solesTapedForInside } from "./rules/solesTapedForInside";
import { stopCellNotRead } from "./rules/stopCellNotRead";
import { stopClosesTooSoon } from "./rules/stopClosesTooSoon";
import { stopOutOfReach } from "./rules/stopOutOfReach";
import { straySpaces } from "./rules/straySpaces";
import { talentBeforePiece } from "./rules/talentBeforePiece";
import { tapeNotOff } from "./rules/tapeNotOff";
import { termsNotRead } from "./rules/termsNotRead";
import { valueAsText } from "./rules/valueAsText";
import { valueMissing } from "./rules/valueMissing";
import { valueNotRead } from "./rules/valueNotRead";
import { weightNotKnown } from "./rules/weightNotKnown";
import { weightNotRead } from "./rules/weightNotRead";
import { weightUnitMissing } from "./rules/weightUnitMissing";
import { weightUnlikely } from "./rules/weightUnlikely";

/** Every rule of the sheet check, in the order in which the documentation lists them. */
export const allRules: readonly Rule[] = [
  columnNotRead,
  dateAsText,
  dateTwoReadings,
  dateNotRead,
  dateUndecided,
  dateFarOff,
  datesOutOfOrder,
  backInFuture,
  dateSystem1904,
  lateNotBack,
  doorOpenOvernight,
  dueMissing,
  dueOnClosedDay,
  termsNotRead,
  quantityNotRead,
  quantityBackTooMany,
  quantityBackZero,
  quantityBackNoDay,
  quantityBackMissing,
  returnNoDay,
  settledAndBack,
  settledNotUnderstood,
  alterationNotUndone,
  tapeNotOff,
  returnNotProved,
  requestToChase,
  requestNotCollected,
  pieceNumberTwice,
  lenderMissing,
  lenderNotListed,
  lenderLikelyMisspelt,
  lenderWrittenTwoWays,
  lenderListedTwice,
  lenderCellNotRead,
  lateFeeNotRead,
  straySpaces,
  valueMissing,
  valueAsText,
  valueNotRead,
  numberNegative,
  currencyDisagrees,
  currencyMissing,
  currencyMisspelt,
  coverPassed,
  keptNotRead,
  refundTooLarge,
  refundWindowEnds,
  depositNotBack,
  weightNotRead,
  weightUnitMissing,
  weightUnlikely,
  weightNotKnown,
  bagOverLimit,
  bagTooHeavy,
  lookNotListed,
  lookWithoutPieces,
  lookPieceNotThere,
  pieceInTwoLooks,
  lookTalentDisagrees,
  lookWithoutShoes,
  lookNumberTwice,
  lookOrderTwice,
  lookOrderGap,
  lookOrderImpossible,
  afterInCircle,
  talentBeforePiece,
  dayOverWrap,
  mealLate,
  lookMinutesMissing,
  minutesOutOfOrder,
  durationAsTime,
  durationNotRead,
  solesNotTaped,
  solesTapedForInside,
  stopCellNotRead,
  stopClosesTooSoon,
  stopOutOfReach,
  cutOffBeforeOpening,
  formulaError,
];
