/** From how many days before a shop's refund window ends the receipt is pressing: room for one way to the shop in the week. Common practice, no source. */
export const usualRefundDays = 7;
