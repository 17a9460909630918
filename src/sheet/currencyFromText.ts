const CODES =
  "AED AUD BGN BHD BRL CAD CHF CLP CNY COP CZK DKK EGP EUR GBP HKD HUF IDR ILS INR ISK JOD JPY KES KRW KWD LBP MAD MXN MYR NGN NOK NZD OMR PEN PHP PLN QAR RON RSD SAR SEK SGD THB TND TRY TWD UAH USD VND ZAR";

// A bare $, ¥ or kr belongs to several countries and stays what it is: no country is guessed.
const SIGNS: Readonly<Record<string, string>> = {
  "£": "GBP",
  "€": "EUR",
  $: "$",
  "¥": "¥",
  "￥": "¥",
  kr: "kr",
  us$: "USD",
  $us: "USD",
  a$: "AUD",
  au$: "AUD",
  c$: "CAD",
  ca$: "CAD",
  can$: "CAD",
  nz$: "NZD",
  hk$: "HKD",
  s$: "SGD",
  nt$: "TWD",
  mx$: "MXN",
  r$: "BRL",
  "cn¥": "CNY",
  "jp¥": "JPY",
  "₹": "INR",
  "₩": "KRW",
  "₺": "TRY",
  "₪": "ILS",
  "₴": "UAH",
  "₫": "VND",
  "฿": "THB",
  "₱": "PHP",
  "₦": "NGN",
  zł: "PLN",
  kč: "CZK",
  fr: "CHF",
  sfr: "CHF",
  euro: "EUR",
  euros: "EUR",
  pound: "GBP",
  pounds: "GBP",
  sterling: "GBP",
  dollar: "$",
  dollars: "$",
  yen: "JPY",
  rmb: "CNY",
  franken: "CHF",
  pfund: "GBP",
  libras: "GBP",
  livres: "GBP",
  sterline: "GBP",
};

/**
 * The currency a sign, code or name stands for: an ISO 4217 code, or "$", "¥" or "kr" where only that is said; null when it is none.
 *
 * Case, accents kept, spaces and a full stop around it are ignored. Codes: ISO 4217, those in use where such sheets are kept.
 */
export function currencyFromText(text: string): string | null {
  const plain = text.replace(/[\s.]+/g, "");
  if (plain.length > 8 || plain === "") return null;
  const sign = SIGNS[plain.toLowerCase()];
  if (sign !== undefined && Object.hasOwn(SIGNS, plain.toLowerCase())) return sign;
  const code = plain.toUpperCase();
  return code.length === 3 && CODES.split(" ").includes(code) ? code : null;
}
