/** Words that questions have in common; they tell no question from another. */
const COMMON = new Set(
  (
    "a an and are as at be by can do does for from go had has have how i in is it its may me much must my of on one or " +
    "so that the their them then there they this to up was we what when where which who whom will with you your show me all every everything list give find need want"
  ).split(" "),
);

/** What people say, and the word that the functions' own help has for it. */
const SAME: Readonly<Record<string, string>> = {
  overdue: "late",
  behind: "late",
  return: "back",
  returned: "back",
  borrowed: "held",
  heavy: "weight",
  kilo: "weight",
  kg: "weight",
  worth: "value",
  insurance: "cover",
  insured: "cover",
  owe: "lender",
  showroom: "lender",
  owner: "lender",
  lunch: "meal",
  eat: "meal",
  route: "order",
  mileage: "distance",
  mile: "distance",
  drive: "distance",
  chase: "request",
  reply: "answer",
  broken: "damaged",
  lost: "missing",
  suitcase: "bag",
  post: "courier",
  ship: "send",
  penalty: "fee",
  percent: "share",
  finish: "wrap",
  end: "wrap",
  outfit: "look",
  probability: "chance",
  item: "piece",
  garment: "piece",
  spend: "spent",
};

/** The words of a question or a text as they are compared: without case, accents and endings, without words that all have. */
export function searchWords(text: string): readonly string[] {
  const words = text
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .toLowerCase()
    .match(/[a-z0-9]+/g);
  return (words ?? []).filter((word) => !COMMON.has(word)).map((word) => stem(SAME[word] ?? SAME[stem(word)] ?? word));
}

/** Enough for the plain words of the help: days and day, sending and send, weighed and weigh are one. */
function stem(word: string): string {
  if (word.length > 5 && /ing$/.test(word)) return word.slice(0, -3);
  if (word.length > 4 && /(?:[^e]ed|ies)$/.test(word)) return word.slice(0, -2);
  if (word.length > 3 && /[^s]s$/.test(word)) return word.slice(0, -1);
  return word;
}
