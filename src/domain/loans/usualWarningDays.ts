/** From how many days before it is due a piece is due soon: room to clean, pack and send it. Common practice, no source. */
export const usualWarningDays = 3;
