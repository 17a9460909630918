import fc from "fast-check";
import { kinds } from "../../shared/headings.json";
import { headingVocabulary } from "../../src/sheet/headingVocabulary";
import { readHeading } from "../../src/sheet/readHeading";
import type { TableKind } from "../../src/sheet/tableKind";

const allKinds = Object.keys(kinds) as TableKind[];

/** "out", or "due? back?" for a heading that gives way and is tried for due first; null where it has no meaning. */
function meaning(kind: TableKind, heading: string): string | null {
  const read = readHeading(kind, heading);
  return read === null ? null : read.readings.map(({ field, givesWay }) => field + (givesWay ? "?" : "")).join(" ");
}

/** The headings that the tool promises to understand, by field. */
const promised: Record<TableKind, string> = {
  pieces:
    "piece Piece Item|description Description|kind Kind|lender Lender|slip Slip|size Size|colour Colour|quantity Quantity|value Value,Insured value|totalValue Total value|currency Currency|weight Weight|out Out,Date out|due Due,Return due|terms Terms|shoot Shoot|back Back,Date back,Returned|quantityBack Quantity back|conditionOut Condition out|conditionBack Condition back|look Look|talent Talent|bag Bag|photo Photo|note Note|job Job|returnedHow Returned how|tracking Tracking|receivedBy Received by|extendedTo Extended to|settled Settled|fitting Fitting|alteration Alteration|alterationUndone Alteration undone|tapeOff Tape off|rentalFee Rental fee|deposit Deposit|collected Collected|holdUntil Hold until|together Together|bagLimit Bag limit,Max weight per bag,Limit per bag",
  lenders:
    "lender Lender|kind Kind|contact Contact|address Address|latitude Latitude|longitude Longitude|open Open|close Close|closedWeekdays Closed weekdays|terms Terms|lateFee Late fee|courierDays Courier days|cutOff Cut-off|receivesUntil Receives until|cleaning Cleaning",
  looks:
    "look Look|order Order|talent Talent|set Set|where Where|change Change|hairMakeup Hair and make-up|shooting Shooting|low Low|likely Likely|high High|arrives Arrives|after After|fixed Fixed|pieces Pieces|photo Photo|date Date|shotAt Shot at|makeupFirst Make-up first|ready Ready",
  requests:
    "lender Lender|asked Asked|wanted Wanted|neededBy Needed by|answer Answer|answered Answered|collect Collect|collected Collected|holdUntil Hold until",
  receipts:
    "shop Shop|bought Bought|amount Amount|kept Kept|terms Terms|refunded Refunded|amountRefunded Amount refunded|job Job",
  stops:
    "stop Stop|open Open|close Close|minutes Minutes|latitude Latitude|longitude Longitude|due Due|receivesUntil Receives until|cutOff Cut-off",
  shoes: "shoes Shoes|size Size|where Where|pairs Pairs",
  day: "date Date|call Call|wrap Wrap|meal Meal|dressers Dressers|chairs Chairs|cover Cover|bagLimit Bag limit,Max bag weight",
};

const promises = allKinds.flatMap((kind) =>
  promised[kind].split("|").flatMap((entry) => {
    const field = entry.slice(0, entry.indexOf(" "));
    return entry
      .slice(field.length + 1)
      .split(/,| (?=Item$)/)
      .map((heading) => [kind, heading, field] as const);
  }),
);

test.each(promises)("in %s the heading %s can always be %s", (kind, heading, field) => {
  expect(readHeading(kind, heading)?.readings.map((reading) => reading.field)).toContain(field);
});

describe("in a table of pieces", () => {
  test.each(
    Object.entries({
      piece:
        "Piece no|PIECE NO.|Piece #|Item no.|Item ref|Item ID|Garment no|Barcode|SKU|N° pièce|Réf. pièce|Nº prenda|Codice capo|Teilenummer|Artikel-Nr.|Stück Nr.",
      "piece? description?": "Item|Article|Artículo|Artikel",
      "piece?": "No.|#|Ref.|ID|Code",
      description:
        "Desc.|Item description|Piece name|Details|Désignation|Libellé|Descripción|Descrizione|Beschreibung|Bezeichnung",
      kind: "Type|Category|Garment type|Kind of garment|Catégorie|Tipo de prenda|Categoría|Tipo di capo|Typ|Kategorie",
      lender:
        "Press office|Showroom|PR|PR agency|Borrowed from|On loan from|Owner|Supplier|Lender name|Prêteur|Bureau de presse|Prêté par|Oficina de prensa|Prestado por|Proveedor|Ufficio stampa|Leihgeber|Presseagentur|Geliehen von|Ausgeliehen von",
      "lender?": "Brand|Designer|House|Shop|Marque|Marca|Marke",
      slip: "Slip no.|Loan slip|Docket no|Delivery note|Bon de prêt|Albarán|Bolla|Lieferschein Nr.|Leihschein",
      size: "SIZE|Taille|Talla|Taglia|Größe|Groesse",
      colour: "Color|Colourway|Couleur|Colore|Farbe",
      quantity:
        "Qty|QTY.|Quantity out|No. of pieces|Number of pieces|Pcs|Quantité|Qté|Nb pièces|Cantidad|Cant.|Quantità|Qtà|Menge|Anzahl|Stückzahl",
      value:
        "Ins. value|Insured val|Insured val (GBP)|Value (£)|VALUE GBP|Value in €|£ value|Value each|Replacement value|Declared value|Valeur assurée|Valeur (€)|Valeur d'assurance|Valor asegurado|Valore assicurato|Versicherungswert|Wert (EUR)",
      "due?": "Deadline",
      "value?": "Price|RRP|Retail price|Prix|Precio|Prezzo|Preis",
      totalValue: "Value (total)|Total insured value|Line value|Valeur totale|Valor total|Valore totale|Gesamtwert",
      currency: "Ccy|Curr.|Devise|Moneda|Valuta|Währung",
      weight: "Wt|Weight kg|Weight (g)|Wgt. (lb)|Poids|Peso|Gewicht (kg)",
      out: "Out date|Went out|Sent out|OutDate|Date-out|Day out|Checked out|Borrowed on|Loan date|Pulled|Received|Date de sortie|Sorti le|Date d'emprunt|Salida|Fecha de salida|Uscita|Data uscita|Ausgang|Ausleihdatum|Ausgeliehen am",
      "out? collected?": "Date collected|Collected on|Picked up|Abgeholt am|Ritirato il",
      due: "Due date|Due back|Ret. due|RET DUE|Return by|Back by|Due for return|To be returned by|À rendre le|Retour prévu|Échéance|Date limite|Vence|Devolver antes de|Vencimiento|Scadenza|Da restituire entro|Fällig am|Rückgabe bis|Fälligkeitsdatum",
      "due? back?": "Return date|Retn date|Ret. date|Date de retour|Fecha de devolución|Data rientro|Rückgabedatum",
      terms:
        "Return terms|Loan terms|Terms of loan|Loan period|Conditions de prêt|Plazo de devolución|Condizioni di reso|Leihfrist|Konditionen",
      shoot: "Shoot date|Shoot day|Shooting date|Last shoot day|Date de tournage|Fecha de rodaje|Drehtag",
      back: "Back on|Came back|Returned on|Date returned|Actual return date|Rendu le|Date de restitution|Devuelto|Restituito il|Zurück am|Zurückgegeben",
      quantityBack:
        "Qty back|Qty returned|Back qty|Pieces returned|Quantité rendue|Cantidad devuelta|Quantità resa|Menge zurück|Anzahl zurück",
      conditionOut:
        "Cond. out|Out condition|Condition at collection|État à la sortie|Estado de salida|Stato uscita|Zustand Ausgabe",
      conditionBack:
        "Cond. back|Condition on return|Return condition|État au retour|Estado devolución|Stato al rientro|Zustand bei Rückgabe",
      look: "Look no.|Look #|LOOKS|Outfit|Tenue",
      talent: "Talent name|Worn by|Porté par|Mannequin|Indossato da",
      bag: "Bag no.|Suitcase|Valise|Koffer",
      photo: "Picture|Pic|Image|Foto",
      note: "Notes|NOTES:|Comments|Remarks|Remarques|Observaciones|Bemerkungen",
      job: "Job no|Project|Production|Projet|Proyecto|Projekt",
      tracking: "Tracking no.|Waybill|Sendungsnummer",
      receivedBy: "Signed by|Signed for by|Reçu par|Recibido por|Ricevuto da",
      extendedTo: "Extended until|New due date|Extension|Prolongé jusqu'au|Verlängert bis",
      rentalFee: "Rental (£)|Hire fee|Frais de location|Alquiler|Noleggio|Leihgebühr",
      holdUntil: "On hold until|Réservé jusqu'au|Reserviert bis",
      together: "Keep together|Pack with|Zusammen",
    }).flatMap(([expected, headings]) => headings.split("|").map((heading) => [heading, expected])),
  )("%s is read as %s", (heading, expected) => expect(meaning("pieces", heading!)).toBe(expected));

  test.each(
    "Ins. amt|From|Total|Location|Returned by|Returned to|Overdue|Days out|Days late|Days back|Late|Status|State|Email|Phone|Website|Lender contact|Lender phone|Season|Fabric|Material|Gender|Age|Height|Waist|Lookbook|Outline|Backup|Back story|Due diligence|Out of office|Valued|VAT|Discount|Insured by|Insurance policy|Policy no|Weight limit|Return address|Return label|Invoice no|Paid|Steamed|Packed|Hair and make-up|Change|Value out|Pieces out late|Next due|12|£|kg|()|?|-".split(
      "|",
    ),
  )("%s has no meaning", (heading) => expect(meaning("pieces", heading)).toBeNull());
});

describe("in the other tables", () => {
  test.each([
    ["lenders", "Name", "lender"],
    ["lenders", "Type", "kind"],
    ["lenders", "Opening hours", "open"],
    ["lenders", "Opens", "open"],
    ["lenders", "Closes", "close"],
    ["lenders", "Closing time", "close"],
    ["lenders", "Closed", "closedWeekdays"],
    ["lenders", "Closed on", "closedWeekdays"],
    ["lenders", "Jours fermés", "closedWeekdays"],
    ["lenders", "Ruhetag", "closedWeekdays"],
    ["lenders", "Lat.", "latitude"],
    ["lenders", "Long", "longitude"],
    ["lenders", "Days by courier", "courierDays"],
    ["lenders", "Adresse", "address"],
    ["looks", "Change (min)", "change"],
    ["looks", "Change minutes", "change"],
    ["looks", "Hair & make up", "hairMakeup"],
    ["looks", "Hair/makeup mins", "hairMakeup"],
    ["looks", "HMU", "hairMakeup"],
    ["looks", "Shooting time", "shooting"],
    ["looks", "Durée de prise de vue", "shooting"],
    ["looks", "Running order", "order"],
    ["looks", "Worn by", "talent"],
    ["looks", "Shoot day", "date"],
    ["looks", "Int/Ext", "where"],
    ["looks", "Location", "where?"],
    ["looks", "Makeup first?", "makeupFirst"],
    ["looks", "Pieces", "pieces"],
    ["looks", "Garments", "pieces"],
    ["looks", "Most likely", "likely"],
    ["looks", "Reihenfolge", "order"],
    ["requests", "Date asked", "asked"],
    ["requests", "Requested on", "asked"],
    ["requests", "Required by", "neededBy"],
    ["requests", "Reply", "answer"],
    ["requests", "Replied on", "answered"],
    ["requests", "Status", "answer?"],
    ["requests", "Pick-up date", "collect"],
    ["requests", "Picked up", "collected"],
    ["receipts", "Store", "shop"],
    ["receipts", "Purchase date", "bought"],
    ["receipts", "Date", "bought?"],
    ["receipts", "Amount (€)", "amount"],
    ["receipts", "Refund date", "refunded"],
    ["receipts", "Refund", "amountRefunded"],
    ["receipts", "Returned", "refunded?"],
    ["stops", "Place", "stop?"],
    ["stops", "Stopp", "stop"],
    ["stops", "Minutes there", "minutes"],
    ["stops", "Arrive from", "open"],
    ["stops", "Arrive until", "close"],
    ["shoes", "Shoe size", "size"],
    ["shoes", "Qty", "pairs"],
    ["shoes", "Inside or outside", "where"],
    ["day", "Call time", "call"],
    ["day", "No. of dressers", "dressers"],
  ] as const)("%s: %s is read as %s", (kind, heading, expected) => expect(meaning(kind, heading)).toBe(expected));
});

test.each([
  ["Value (£)", "GBP", null],
  ["Value (in EUR)", "EUR", null],
  ["Ins. value USD", "USD", null],
  ["$ value", "$", null],
  ["Weight (kg)", null, "kg"],
  ["Weight g", null, "g"],
  ["Wt. in lbs", null, "lb"],
  ["Value", null, null],
  ["Value (per piece)", null, null],
])("%s hints at %s, %s", (heading, currency, unit) =>
  expect(readHeading("pieces", heading)?.hint).toEqual({ currency, unit }),
);

test("a duration in hours has no meaning, since its numbers would be taken for minutes", () => {
  expect(meaning("looks", "Change (min)")).toBe("change");
  expect(meaning("looks", "Change (h)")).toBeNull();
  expect(meaning("looks", "Shooting hours")).toBeNull();
});

test("brackets that say something unknown hide nothing: the heading then has no meaning", () => {
  expect(meaning("pieces", "Due (returned)")).toBeNull();
  expect(meaning("pieces", "Out (see slip)")).toBeNull();
});

test("no heading in the vocabulary is plainly two fields of one kind", () => {
  for (const kind of allKinds) {
    for (const [words, readings] of headingVocabulary(kind).inOrder) {
      const plain = readings.filter((reading) => !reading.givesWay);
      expect([kind, words, plain.length > 1 || (plain.length === 1 && readings.length > 1)]).toEqual([
        kind,
        words,
        false,
      ]);
    }
  }
});

test("case, accents, punctuation, spacing and plural s change nothing", () => {
  const heading = fc.constantFrom(
    "Date out",
    "Return due",
    "Insured value",
    "Quantity back",
    "Press office",
    "Condition back",
    "Retour prévu",
  );
  const disturb = fc.record({
    upper: fc.boolean(),
    sign: fc.constantFrom(" ", "-", "_", ".", " / ", "  "),
    end: fc.constantFrom("", ":", ".", " ", "?"),
  });
  fc.assert(
    fc.property(heading, disturb, (text, { upper, sign, end }) => {
      const typed = (upper ? text.toUpperCase() : text.toLowerCase()).split(" ").join(sign) + end;
      expect([typed, meaning("pieces", typed)]).toEqual([typed, meaning("pieces", text)]);
    }),
  );
});

test("any text whatever is read without a fault", () => {
  fc.assert(
    fc.property(
      fc.string({ unit: "binary" }),
      fc.constantFrom(...allKinds),
      (text, kind) => void readHeading(kind, text),
    ),
  );
});
