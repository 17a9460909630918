/** Whether two currencies contradict each other: a bare $, ¥ or kr belongs to several and contradicts only what is none of them. */
export function isOtherCurrency(one: string, other: string): boolean {
  if (one === other) return false;
  return !(isSignOf(one, other) || isSignOf(other, one));
}

const CODES_OF_SIGN: Readonly<Record<string, RegExp>> = {
  $: /^(?:USD|AUD|CAD|NZD|HKD|SGD|TWD|MXN|CLP|COP)$/,
  "¥": /^(?:JPY|CNY)$/,
  kr: /^(?:SEK|NOK|DKK|ISK)$/,
};

function isSignOf(sign: string, code: string): boolean {
  return CODES_OF_SIGN[sign]?.test(code) ?? false;
}
