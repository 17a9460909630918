import { isOwnKit } from "../../src/sheet/isOwnKit";

test.each(["own", "Own kit", "my kit", "mine", "stylist’s kit", "Kit", "perso"])("%p is one's own", (lender) => {
  expect(isOwnKit(lender)).toBe(true);
});

test.each(["Maison Orla", "Owen", "Kitson", "Kit & Co", "Mine House", ""])("%p is a lender", (lender) => {
  expect(isOwnKit(lender)).toBe(false);
});
