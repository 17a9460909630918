import { ValueObjectFactory } from "@univerjs/engine-formula";

/**
 * The engine (0.25.1) takes a quoted text in a formula for a number where it looks like one: "05/03/26" becomes a day
 * in US order and "50%" a half. In Excel a quoted text is text, and a function decides itself what it says.
 */
export function mendTextLiterals(): void {
  const create = ValueObjectFactory.create.bind(ValueObjectFactory);
  ValueObjectFactory.create = (raw, isIgnoreNumberPattern) =>
    create(raw, isIgnoreNumberPattern === true || (typeof raw === "string" && /^".*"$/s.test(raw.trim())));
}
