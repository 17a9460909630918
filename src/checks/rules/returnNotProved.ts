import { showGiven } from "../../domain/showGiven";
import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { defineRule } from "../defineRule";
import { holdsSomething } from "../holdsSomething";
import { isFarOff } from "../isFarOff";
import { isOwnKit } from "../../sheet/isOwnKit";
import { textIn } from "../textIn";

const PROOFS = ["returnedHow", "tracking", "receivedBy"] as const;
// Common practice, no source: a way of sending that has a number, in the five languages of the headings.
const SENT =
  /\b(?:courier|post(?:ed)?|mail(?:ed)?|parcel|shipp?ed|shipping|coursier|poste|colis|colissimo|kurier|paket|versand|corriere|spedit[oa]|spedizione|pacco|mensajer[oa]|mensajeria|correos?|paquete|envio)\b/;

/** Only in a table that keeps such columns: where nobody notes it, nobody misses it. */
export const returnNotProved = defineRule({
  id: "returnNotProved",
  about: "A piece that is back with no note of how it went, its tracking number, or who took it in.",
  why: "When a lender says that it never came, a name or a number settles it, and a memory does not.",
  severity: "note",
  fixable: false,
  scope: "row",
  tables: ["pieces"],
  needs: ["back"],
  messages: {
    noProof: "Back {{back}}, with nothing to show for it. Note how it went, the tracking number, or who took it in.",
    noCarrier: "Back {{back}} with the number {{tracking}}, and no word of who carried it. Note how it went.",
    noNumber: 'Back {{back}} by "{{how}}", with no tracking number and no name. Note who took it in, or the number.',
  },
  check(row, report, facts) {
    const kept = PROOFS.filter((field) => row.table.columnOf[field] !== undefined);
    if (kept.length === 0) return;
    const loan = facts.loan(row);
    if (loan === null || loan.out === null || loan.back === null || loan.isSettled) return;
    if (loan.back < loan.out || loan.back > facts.asOf || isFarOff(loan.back, facts.asOf)) return;
    const lender = textIn(row, "lender");
    if (lender !== null && isOwnKit(lender)) return;
    const back = isoFromSerial(loan.back);
    const filled = kept.filter((field) => holdsSomething(row, field));
    if (filled.length === 0) return report({ row, field: kept[0]!, messageId: "noProof", data: { back } });
    const tracking = textIn(row, "tracking");
    if (filled.length === 1 && filled[0] === "tracking" && kept.includes("returnedHow") && isBareNumber(tracking)) {
      return report({
        row,
        field: "returnedHow",
        messageId: "noCarrier",
        data: { back, tracking: showGiven(tracking) },
      });
    }
    const missing = kept.find((field) => field !== "returnedHow");
    if (filled.length > 1 || filled[0] !== "returnedHow" || missing === undefined) return;
    const how = textIn(row, "returnedHow") ?? "";
    const plain = how
      .normalize("NFD")
      .replace(/[\u0300-\u036f]/g, "")
      .toLowerCase();
    if (SENT.test(plain)) report({ row, field: missing, messageId: "noNumber", data: { back, how: showGiven(how) } });
  },
});

/** A number that names no carrier: "AB 123", not "Norrpost 123". */
function isBareNumber(tracking: string | null): tracking is string {
  return tracking !== null && /\d/.test(tracking) && !/\p{L}{3}/u.test(tracking);
}
