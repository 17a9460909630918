/**
 * What a word of return terms means, as one letter, so that a whole phrase can be matched as a short string:
 *
 * D day, d days · B working day, b working days · W working · C calendar · K week · Z fortnight · M month · H hour · V the day after (overnight) ·
 * y the same day · Y same · X next · G following · A after · P of · I within · E end · Q end of month · L last · S shoot ·
 * O the day out · R receipt · a "a" or "one" · "" said for politeness.
 *
 * English, French, Spanish, Italian, German; lower case, without accents. "ouvrables", "feriali" and "Werktage" are working
 * days of the calendar in use, as every working day here: whether Saturday is one, the weekend argument says.
 */
const WORDS_OF_SYMBOL: Readonly<Record<string, string>> = {
  D: "morning evening soir abend matin mattina day night dia jour giorno tag",
  d: "days dys dyas d nights dias jours jrs jr j giorni gg g tage tagen t",
  B: "workday weekday businessday workingday werktag arbeitstag geschaftstag",
  b: "wt wd wds bd bds workdays weekdays businessdays workingdays werktage werktagen arbeitstage arbeitstagen geschaftstage geschaftstagen",
  W: "w working workin wrking wroking work wkg wrkg wking business busines bus biz bizz bank banking office laborable laborables habil habiles ouvre ouvres ouvrable ouvrables lavorativo lavorativi lav feriale feriali",
  C: "calendar cal consecutive natural naturales calendario calendaire calendaires solare solari",
  K: "wo week weeks wk wks semana semanas semaine semaines sem settimana settimane sett woche wochen",
  Z: "fortnight quattordicina",
  M: "month months mth mths mo mos mes meses mois mese mesi monat monate monaten monats",
  H: "hs hour hours hr hrs h hora horas heure heures ora ore stunde stunden std",
  V: "folgetag overnight lendemain",
  y: "sameday taggleich giornata",
  Y: "same mismo mismos meme stesso stessa medesimo selber selben selbe gleichen gleicher",
  X: "nxt next prochain prochaine proximo prossimo nachster nachsten nachste",
  G: "following siguiente suivant suivante successivo seguente folgend folgenden folgender",
  A: "after afterwards aft post from since plus despues tras desde apres depuis partir compter dopo dal dalla dalle dagli dallo dall dai nach ab vom",
  P: "with of as de del du des della dello delle degli von wie",
  I: "innert within inside dentro sous entro binnen innerhalb",
  E: "end ends fin fine ende schluss",
  Q: "eom monatsende",
  L: "last final ultimo ultima dernier derniere letzter letzten letzte",
  S: "job shoot shoots shooting shootings photoshoot shootday wrap wrapped wraps photo foto fotos photos rodaje sesion tournage prise prises vue vues servizio riprese set dreh drehs drehtag drehschluss drehende fotoshooting aufnahme aufnahmen",
  O: "pull pulled collection collected collecting pickup pick out collect recogida retirada retrait enlevement ritiro abholung ausleihe",
  R: "receipt receipts purchase purchased bought recibo compra achat ricevuta scontrino acquisto quittung beleg kauf kaufdatum kassenbon",
  a: "a an one un una une uno ein eine einen einem einer eines",
  "": "dans rtn ret policy firm strict maxi turnaround refund refunds refunded window rientro ruckversand the to be in on at by for it s l is are due back return returned returns returning please strictly max maximum latest up until till later only net term terms loan loans loaned hire rental period date time cob eod eob pls send sent el la los las le les il lo i gli al alla au aux der die das den dem zu im am bis hasta par jusqu jusque ici all en su zum zur ruckgabe zuruck zuruckgeben retour retourner rendre rendu retorno devolver devolucion restituire restituzione reso resi fecha datum data spatestens plazo delai frist termin termine termino",
};

const SYMBOL_OF_WORD: ReadonlyMap<string, string> = new Map(
  Object.entries(WORDS_OF_SYMBOL).flatMap(([symbol, words]) => words.split(" ").map((word) => [word, symbol] as const)),
);

/** The letter for a word's meaning in return terms; undefined for a word the terms do not know. */
export function termSymbol(word: string): string | undefined {
  return SYMBOL_OF_WORD.get(word);
}
