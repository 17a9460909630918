import { isUndecided } from "../../sheet/isUndecided";
import { nameKey } from "../../sheet/nameKey";
import { readTalents } from "../../sheet/readTalents";
import { defineRule } from "../defineRule";
import { listedRow } from "../listedRow";
import { lookName } from "../lookName";
import { textIn } from "../textIn";

/** "Ana" and "Ana Silva" are taken for one. A piece in several looks may be on anybody who wears one of them. */
export const lookTalentDisagrees = defineRule({
  id: "lookTalentDisagrees",
  about: "A piece whose talent is not the one who wears its look.",
  why: "The piece is fitted on one and hangs on another's rail.",
  severity: "warning",
  fixable: false,
  scope: "row",
  tables: ["pieces"],
  uses: ["looks"],
  needs: ["look", "talent"],
  messages: {
    other: "{{talent}} is named here, but look {{look}} is worn by {{wearer}}. Correct the talent or the look.",
  },
  check(row, report, facts) {
    const talent = textIn(row, "talent");
    if (talent === null || isUndecided(talent)) return;
    const named = facts.looksOf(row);
    const wearers = named.map(({ key }) => {
      const listed = listedRow(key, row, facts);
      return listed === null ? null : textIn(listed, "talent");
    });
    const [first] = named;
    const wearer = wearers.find((each) => each !== null && !isUndecided(each));
    // Where one of the looks does not say who wears it, it may be this talent.
    if (
      first === undefined ||
      wearer === undefined ||
      wearer === null ||
      wearers.some((each) => each === null || isUndecided(each))
    )
      return;
    const worn = wearers.join(";");
    if (facts.once("same talent", `${talent}|${worn}`, () => areSamePeople(talent, worn))) return;
    const look = named.find((_, index) => wearers[index] === wearer) ?? first;
    report({ row, field: "talent", messageId: "other", data: { talent, look: lookName(look.name), wearer } });
  },
});

function areSamePeople(here: string, there: string): boolean {
  return readTalents(here).some((one) => readTalents(there).some((other) => isSamePerson(one, other)));
}

function isSamePerson(one: string, other: string): boolean {
  const words = wordsOf(one);
  const others = wordsOf(other);
  const [fewer, more] = words.length <= others.length ? [words, others] : [others, words];
  return fewer.length > 0 && fewer.every((word) => more.some((longer) => longer === word || isInitialOf(word, longer)));
}

/** A single letter is taken for the name it begins: "A. Silva" for Ana Silva. */
function isInitialOf(short: string, long: string): boolean {
  return (short.length === 1 && long.startsWith(short)) || (long.length === 1 && short.startsWith(long));
}

function wordsOf(name: string): readonly string[] {
  return name
    .split(/[\s.\-–]+/)
    .map(nameKey)
    .filter((word) => word !== "");
}
