import { fullerName } from "../../src/checks/fullerName";

const find = fullerName(["Maison Orla", "Halden Press Office", "Studio Nord", "Studio Sud", "Ado"]);

test.each([
  ["Orla", "Maison Orla"],
  ["orla maison", "Maison Orla"],
  ["Halden", "Halden Press Office"],
  ["Maison Orla, Paris", "Maison Orla"],
  ["Studio", null],
  ["Ado", null],
  ["Corbel", null],
  ["", null],
])("%p is %p", (name, expected) => {
  expect(find(name)).toBe(expected);
});
