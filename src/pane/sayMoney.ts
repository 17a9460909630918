/** "GBP 1,250", "EUR 99.50", "1,250" where the sheet names no currency. A code of letters stands before the amount, a sign too. */
export function sayMoney(amount: number, currency: string): string {
  const digits = Number.isInteger(amount) ? 0 : 2;
  const figure = amount.toLocaleString("en-GB", {
    minimumFractionDigits: digits,
    maximumFractionDigits: Math.max(digits, 2),
  });
  if (currency === "") return figure;
  return currency.length < 3 ? `${currency}${figure}` : `${currency} ${figure}`;
}
