import { columnsOfTable } from "../../src/functions/columnsOfTable";

const tables = [
  { kind: "pieces", cells: [["Code", "Outfit", "Went", "Came"]] },
  { kind: "looks", cells: [["Outfit", "Mins", "Dressing"]] },
] as const;

test.each([
  ["a field of one table alone goes there", "out=Went; shooting=Mins", "out=Went", " shooting=Mins"],
  [
    "commas part them as well",
    "look=Outfit, shooting=Mins, out=Went",
    "look=Outfit; out=Went",
    "look=Outfit; shooting=Mins",
  ],
  ["a field of both goes wherever its heading is", "look=Outfit", "look=Outfit", "look=Outfit"],
  ["and to one where only that has the heading", "look=Code", "look=Code", ""],
  ["a heading that neither has stays with the first", "look=Nothing", "look=Nothing", ""],
  ["a field that neither has too", "colour of eyes=Outfit", "colour of eyes=Outfit", ""],
  ["a field of the second alone whose heading is missing goes there", "shooting=Nothing", "", "shooting=Nothing"],
  ["a field's own name goes before a heading that means another field", "shooting=Came", "", "shooting=Came"],
  ["a field with nothing behind it goes to all that have it", "talent=", "talent=", "talent="],
])("%s", (_, columns, first, second) => {
  expect([columnsOfTable(columns, tables, 0), columnsOfTable(columns, tables, 1)]).toEqual([first, second]);
});

test.each([[null], [undefined], [""], [0]])("%j is handed on", (blank) => {
  expect(columnsOfTable(blank, tables, 0) || null).toBeNull();
});
