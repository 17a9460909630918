import {
  BooleanValueObject,
  ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
  type BaseValueObject,
} from "@univerjs/engine-formula";

/** What a binding may put in a cell: a plain value, a number with its format, or the host's error. */
interface HostValue {
  readonly type: string;
  readonly basicValue: unknown;
  readonly numberFormat?: string;
}

/** One result of a binding as the engine's own value. A null shows 0, as it does in Excel. */
export function engineValue(result: unknown): BaseValueObject {
  if (result === null || result === undefined) return NumberValueObject.create(0);
  if (typeof result === "number") return number(result, "");
  if (typeof result === "boolean") return BooleanValueObject.create(result);
  if (typeof result === "string") return StringValueObject.create(result);
  if (result instanceof Error) return ErrorValueObject.create(errorType((result as { code?: unknown }).code));
  const held = result as HostValue;
  if (held.type === "Error") return ErrorValueObject.create(errorType(held.basicValue));
  return number(Number(held.basicValue), held.numberFormat ?? "");
}

function number(value: number, pattern: string): BaseValueObject {
  if (!Number.isFinite(value)) return ErrorValueObject.create(ErrorType.NUM);
  return NumberValueObject.create(value, pattern);
}

function errorType(code: unknown): ErrorType {
  return Object.values(ErrorType).find((known) => known === code) ?? ErrorType.VALUE;
}
