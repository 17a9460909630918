import type { FunctionDoc } from "./FunctionDoc";
import { otherQuestions } from "./otherQuestions";
import { searchWords } from "./searchWords";

/** What a word is worth where it is found. The question a function answers says most; a name typed in full settles it. */
const WEIGHTS = { id: 30, question: 20, asked: 12, answers: 6, summary: 3, family: 1, params: 1 };

/**
 * The functions that answer a question, the best first; all of them, in their own order, where nothing is asked.
 *
 * A word also counts where it begins a longer one, so that the list is useful while typing; rarer words count more.
 */
export function findFunctions(docs: readonly FunctionDoc[], question: string): readonly FunctionDoc[] {
  const asked = [...new Set(searchWords(question))];
  if (question.trim() === "") return docs;
  const typed = question
    .trim()
    .toUpperCase()
    .replace(/^=?TACK\.?/, "");
  const indexed = docs.map((doc) => ({ doc, places: placesOf(doc) }));
  const rarity = new Map(
    asked.map((word) => {
      const holders = indexed.filter(({ places }) => places.some(({ words }) => words.some((held) => held === word)));
      return [word, 1 + Math.log((docs.length + 1) / (holders.length + 1))];
    }),
  );
  return indexed
    .map(({ doc, places }, index) => {
      let score = typed !== "" && doc.id.startsWith(typed) ? WEIGHTS.id : 0;
      // "What is late?" is how one question begins, word for word.
      const plain = [doc.answers, ...(otherQuestions[doc.id] ?? "").split("|")].map(plainOf);
      if (plain.some((own) => own.startsWith(plainOf(question)))) score += WEIGHTS.question;
      let found = score > 0 ? asked.length : 0;
      for (const word of asked) {
        let best = 0;
        for (const { words, weight } of places) {
          const share = words.includes(word)
            ? 1
            : words.some((held) => word.length > 1 && held.startsWith(word))
              ? 0.6
              : 0;
          // Of a short question one word says more than of a long one.
          best = Math.max(best, weight * share * (1 + 1 / (words.length + 1)));
        }
        if (best > 0) found += 1;
        score += best * (rarity.get(word) ?? 1);
      }
      score += WEIGHTS.asked * Math.max(...questionsOf(doc).map((words) => likeness(asked, words, rarity)));
      return { doc, index, score: score * (asked.length === 0 ? 1 : Math.min(1, found / asked.length)) };
    })
    .filter(({ score }) => score > 0)
    .sort((one, other) => other.score - one.score || one.index - other.index)
    .map(({ doc }) => doc);
}

/** The ways in which a function is asked for, as words. */
function questionsOf({ id, answers }: FunctionDoc): readonly (readonly string[])[] {
  return [answers, ...(otherQuestions[id] ?? "").split("|")].map(searchWords);
}

/** How much of what is asked a question has, and of a question what is asked, from 0 to 1; rarer words count more. */
function likeness(asked: readonly string[], words: readonly string[], rarity: ReadonlyMap<string, number>): number {
  if (asked.length === 0 || words.length === 0) return 0;
  const weight = (of: readonly string[]) => of.reduce((sum, word) => sum + (rarity.get(word) ?? 1), 0);
  const shared = asked.filter((word) => words.includes(word));
  return (weight(shared) / weight(asked)) * (0.7 + (0.3 * shared.length) / words.length);
}

function plainOf(text: string): string {
  return ` ${text
    .toLowerCase()
    .replace(/['’]s\b/g, " is")
    .replace(/[^a-z0-9]+/g, " ")
    .trim()} `;
}

function placesOf(doc: FunctionDoc): readonly { readonly words: readonly string[]; readonly weight: number }[] {
  return [
    { words: searchWords(doc.answers), weight: WEIGHTS.answers },
    ...(otherQuestions[doc.id] ?? "")
      .split("|")
      .map((phrase) => ({ words: searchWords(phrase), weight: WEIGHTS.summary })),
    { words: searchWords(doc.summary), weight: WEIGHTS.summary },
    { words: searchWords(doc.family), weight: WEIGHTS.family },
    { words: searchWords(doc.params.map(({ text }) => text).join(" ")), weight: WEIGHTS.params },
  ];
}
