import weights from "../../../shared/garment-weights.json" with { type: "json" };

/** The days that are added up: from so many before the last shoot day, whose own row is this. */
const FIRST_DAY = 30;
const DAYS = 60;
/** So many days before the last shoot day the sheet Value begins. */
const VALUE_DAYS_BEFORE = 11;

/** What stands beside a piece on the sheet of pieces, so that a formula can add it up: the letter of each. */
const MORE = {
  weight: "W",
  kind: "X",
  bag: "AA",
  conditionOut: "AB",
  conditionBack: "AC",
  rental: "AD",
  deposit: "AE",
  job: "AF",
};

/** Adds what the answers need beside the pieces, and the helping columns that only formulas fill. */
export function fillPieces(sheet, scenario, pieces) {
  const at = (row, heading) => row[scenario.headings.indexOf(heading)];
  pieces.forEach((row, i) => {
    const line = i + 1;
    const cell = (letter) => sheet.getCell(`${letter}${line}`);
    const typed = at(row, "Weight");
    const kilos = /^\d/.test(typed) ? parseFloat(typed) * (/\d\s*g$/.test(typed) ? 0.001 : 1) : 0;
    cell(MORE.weight).value = kilos;
    cell(MORE.kind).value = at(row, "Type");
    cell(MORE.bag).value = at(row, "Bag");
    cell(MORE.conditionOut).value = at(row, "Cond. out");
    cell(MORE.conditionBack).value = at(row, "Cond. back");
    cell(MORE.rental).value = Number(at(row, "Rental fee"));
    cell(MORE.deposit).value = Number(at(row, "Deposit"));
    cell(MORE.job).value = at(row, "Job");
    // The value sheet counts the rows whose value is a number and whose return is a day or blank.
    cell("N").value = /^\d+$/.test(at(row, "Ins. value")) && !at(row, "Date back").startsWith("'") ? 1 : 0;
    const put = (letter, formula) => (cell(letter).value = { formula });
    put("O", `IF(G${line}=0,0,MAX(0,F${line}-G${line}))`);
    put("Q", `IF(N${line}*(1-M${line})=1,F${line}*H${line},0)`);
    put("R", `IF(N${line}*(1-M${line})=1,(F${line}-O${line})*H${line},0)`);
    put("S", `IF(N${line}*(1-M${line})=1,F${line},0)`);
    put("T", `IF(N${line}*(1-M${line})=1,F${line}-O${line},0)`);
    cell("U").value = weights.grams[at(row, "Type")] / 1000;
    put("V", `IF(AND(E${line}="",M${line}=0,AA${line}<>""),F${line},0)`);
    put("AG", `IF(AND(I${line}>0,L${line}<>"",L${line}>=$Z$2,L${line}<=$Z$2+3),1,0)`);
    put("AH", `IF(AND(E${line}<>"",E${line}<>"?",G${line}>0),MAX(0,F${line}-G${line}),0)`);
    put(
      "AI",
      `IF(AND(E${line}<>"",E${line}<>"?",AC${line}<>"",AC${line}<>"good",AC${line}<>"as new",AC${line}<>AB${line}),1,0)`,
    );
    put("AJ", `AH${line}*N(H${line})`);
  });
}

/** The receipts as numbers, and the requests with the working days they have waited. */
export function fillOthers(book, scenario, { serial, closed }) {
  const receipts = book.addWorksheet("C");
  const money = (typed) => (typeof typed === "string" ? Number(typed.replace(/[^\d.]/g, "")) : typed);
  const receiptAt = (row, heading) => row[scenario.receiptHeadings.indexOf(heading)];
  scenario.receipts.forEach((row, i) => {
    const line = i + 1;
    const put = (letter, value) => (receipts.getCell(`${letter}${line}`).value = value);
    const keeps = receiptAt(row, "Kept");
    put("A", serial(receiptAt(row, "Bought")));
    put("B", money(receiptAt(row, "Amount")));
    put("C", keeps === "yes" ? "yes" : money(keeps));
    put("D", receiptAt(row, "Terms") === "" ? null : Number.parseInt(receiptAt(row, "Terms")));
    put("E", receiptAt(row, "Refunded") === "" ? 0 : 1);
    put("F", money(receiptAt(row, "Amount refunded")));
    put("G", receiptAt(row, "Job"));
    put("H", { formula: `IF(C${line}="yes",B${line}-I${line},C${line})` });
    put("I", { formula: `IF(F${line}>0,F${line},IF(E${line}=1,B${line}-N(C${line}),0))` });
    put("J", { formula: `B${line}-H${line}-I${line}` });
    put("K", { formula: `IF(D${line}="",0,A${line}+D${line})` });
    receipts.getCell(`K${line}`).numFmt = "0";
  });
  const requests = book.addWorksheet("Q");
  const requestAt = (row, heading) => row[scenario.requestHeadings.indexOf(heading)];
  const dayOf = (typed) => (/^\d{4}/.test(typed) ? serial(typed) : null);
  scenario.requests.forEach((row, i) => {
    const line = i + 1;
    const put = (letter, value) => (requests.getCell(`${letter}${line}`).value = value);
    put("A", dayOf(requestAt(row, "Asked")));
    put("B", dayOf(requestAt(row, "Needed by")));
    put("C", requestAt(row, "Answer"));
    put("D", dayOf(requestAt(row, "Collected")));
    put("E", {
      formula: `IF(OR(C${line}="",C${line}="waiting"),IF(A${line}="",0,IF(NETWORKDAYS(A${line},P!$Z$2,${closed})-1>=2,1,0)),IF(AND(C${line}<>"no",D${line}="",B${line}<=WORKDAY(P!$Z$2,2,${closed})),1,0))`,
    });
  });
}

/** A row a day: what is held at the day's close, how many pieces, and what is held while the day of return still counts. */
export function fillDays(book, scenario, rows) {
  const days = book.addWorksheet("D");
  const p = (letter) => `P!$${letter}$1:$${letter}$${rows}`;
  const outBy = (letter, line) => `SUMIFS(${p(letter)},${p("C")},"<="&A${line})`;
  const backBy = (letter, line, sign) => `SUMIFS(${p(letter)},${p("C")},"<="&A${line},${p("E")},"${sign}"&A${line})`;
  for (let line = 1; line <= DAYS; line++) {
    const put = (letter, formula) => (days.getCell(`${letter}${line}`).value = { formula });
    put("A", `P!$Z$1-${FIRST_DAY}+${line}`);
    days.getCell(`A${line}`).numFmt = "0";
    put("B", `${outBy("Q", line)}-${backBy("R", line, "<=")}`);
    put("C", `${outBy("S", line)}-${backBy("T", line, "<=")}`);
    put("D", `${outBy("Q", line)}-${backBy("R", line, "<")}`);
    put("E", `IF(D${line}>${scenario.coverLimit},1,0)`);
  }
}

/** The answers' cells on the sheets of the sample, each with the formula that gives it from the filled sheets. */
export function answerFormulas(scenario, { pieces, closed }) {
  const rows = pieces.length;
  const at = (row, heading) => row[scenario.headings.indexOf(heading)];
  const p = (letter) => `P!$${letter}$1:$${letter}$${rows}`;
  const c = (letter) => `C!$${letter}$1:$${letter}$${scenario.receipts.length}`;
  const d = (letter) => `D!$${letter}$1:$${letter}$${DAYS}`;
  const dayRow = (offset) => FIRST_DAY + offset;
  const one = pieces.findIndex((row) => at(row, "Item no.") === String(scenario.pieceToLookAt)) + 1;
  const kilos = `IF(${p("W")}>0,${p("W")},${p("U")})`;
  const packed = pieces.filter(
    (row) => at(row, "Date back") === "" && at(row, "Settled") === "" && at(row, "Bag") !== "",
  );
  const asOfOffset = scenario.daysShown - 1 - VALUE_DAYS_BEFORE;
  const cells = [
    ["Returns!H8", `P!D${one}`],
    ["Returns!H9", `WORKDAY(P!L${one},-1,${closed})`],
    ["Returns!H10", `P!$Z$2-P!C${one}`],
    ["Returns!H11", `MAX(0,P!$Z$2-P!L${one})`],
    ["Returns!H13", `5*MAX(0,P!$Z$2-P!L${one})`],
    ["Value!B6", `D!B${dayRow(asOfOffset)}`],
    ["Value!B7", `D!B${dayRow(0)}`],
    ["Value!B9", `${rows}-SUM(${p("N")})`],
    ["Value!D6", `INDEX(${d("A")},MATCH(MAX(${d("B")}),${d("B")},0))`],
    ["Value!E6", `INDEX(${d("C")},MATCH(MAX(${d("B")}),${d("B")},0))`],
    ["Value!F6", `MAX(${d("B")})`],
    ["Value!E10", `_xlfn.MINIFS(${d("A")},${d("E")},1)`],
    ["Value!F10", `_xlfn.MAXIFS(${d("A")},${d("E")},1)`],
    ["Value!G10", `MAX(${d("D")})`],
    ["Value!H10", `MAX(${d("D")})-${scenario.coverLimit}`],
    ["Money!O9", "0.2*MAX(0,0.3*2400-500)"],
    ["Carry!B5", `SUMPRODUCT(${p("V")},${kilos})`],
    // No fewer bags than the weight fills, so that many are the fewest.
    ["Carry!B7", `CEILING(SUMPRODUCT(${p("V")},${kilos})/12,1)`],
    ["Carry!B10", `SUMPRODUCT(${p("V")}*(${p("AA")}="blue holdall"),${kilos})`],
    // The revised NIOSH lifting equation, multiplier by multiplier: reach, height, travel, turn, frequency, poor coupling.
    ["Carry!B18", "23*(25/35)*(1-0.003*ABS(30-75))*(0.82+4.5/50)*1*1*0.9"],
    ["Carry!B27", "CEILING(MAX(10,62*49*39/5000),0.5)"],
    ["Day 1!G4", "TIME(8,0,0)+6/24"],
    ["Pick-up!G4", "TIME(9,0,0)+6/24"],
    ["Run order!G8", "23*0.55"],
    ["Shoes!N8", "ROUND((3*((39-2)/1.5)/2.54-23)*2,0)/2"],
    ["Best order!B7", `TIME(${scenario.days[0].wrap.split(":").join(",")},0)`],
  ];
  for (let step = 0; step < scenario.daysShown; step++) {
    const line = dayRow(step - VALUE_DAYS_BEFORE);
    cells.push([`Value!J${6 + step}`, `D!A${line}`], [`Value!K${6 + step}`, `D!C${line}`]);
    cells.push([`Value!L${6 + step}`, `D!B${line}`]);
  }
  [...new Set(packed.map((row) => at(row, "Type")))].forEach((kind, i) => {
    const ofKind = `(${p("X")}="${kind}")*${p("V")}`;
    cells.push([`Carry!E${6 + i}`, `SUMPRODUCT(${ofKind})`]);
    cells.push([`Carry!G${6 + i}`, `SUMPRODUCT(${ofKind},${p("W")})`]);
    cells.push([`Carry!H${6 + i}`, `SUMPRODUCT(${ofKind}*(${p("W")}=0),${p("U")})`]);
  });
  [...new Set(scenario.receipts.map((row) => row[scenario.receiptHeadings.indexOf("Job")]))].forEach((job, i) => {
    const of = (letter) => `SUMIFS(${c(letter)},${c("G")},"${job}")`;
    cells.push([`Money!G${6 + i}`, of("B")], [`Money!H${6 + i}`, of("H")], [`Money!I${6 + i}`, of("I")]);
    cells.push([`Money!J${6 + i}`, of("J")]);
    cells.push([`Money!K${6 + i}`, `SUMIFS(${p("AD")},${p("AF")},"${job}")`]);
    cells.push([`Money!L${6 + i}`, `SUMIFS(${p("AE")},${p("AF")},"${job}",${p("E")},"")`]);
  });
  scenario.shoes.forEach(([, size, where], i) => {
    const foot = typeof size === "number" ? `((${size}-2)/1.5*10)` : `((${size.replace(/\D/g, "")}+23)/3*25.4)`;
    const metres = `CEILING(CEILING((0.4*${foot}-5)/45,1)*(${foot}+15)*2/10,1)/100`;
    cells.push([`Shoes!J${5 + i}`, metres], [`Shoes!K${5 + i}`, where === "outdoors" ? metres : "0"]);
  });
  return cells;
}
