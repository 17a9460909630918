import { readTalents } from "../../src/sheet/readTalents";

test.each([
  ["Mina", ["Mina"]],
  ["Mina, Teo", ["Mina", "Teo"]],
  ["Mina; Teo;", ["Mina", "Teo"]],
  ["Mina & Teo", ["Mina", "Teo"]],
  ["Mina + Teo and Ana", ["Mina", "Teo", "Ana"]],
  ["Mina AND Teo", ["Mina", "Teo"]],
  ["Alessandra", ["Alessandra"]],
  ["Sandy Randall", ["Sandy Randall"]],
  ["  ", []],
])("%j holds %j", (text, names) => {
  expect(readTalents(text)).toEqual(names);
});
