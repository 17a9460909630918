import type { Money } from "../sheet/readMoney";

/** What a cell of a money column says; each of the rules about amounts answers to one of these. */
export type MoneyReading =
  | { readonly is: "blank" }
  | { readonly is: "number"; readonly amount: number }
  | { readonly is: "undecided"; readonly given: string }
  | { readonly is: "text"; readonly given: string; readonly money: Money }
  | { readonly is: "two amounts"; readonly given: string; readonly first: number; readonly second: number }
  | { readonly is: "no amount"; readonly given: string }
  | { readonly is: "error" };
