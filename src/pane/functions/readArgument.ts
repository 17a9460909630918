import { sayProblem } from "../../domain/wording";
import { showGiven } from "../../domain/showGiven";
import type { ArgumentReading } from "./ArgumentReading";
import { evaluateReference, type ReferenceSurroundings } from "./evaluateReference";
import type { ParamDoc } from "./FunctionDoc";

const PLAIN_NUMBER = /^-?(?:0|[1-9]\d*)(?:\.\d+)?$/;

/**
 * What was typed for an argument: with = a part of a formula, else a value as it would be typed into a cell.
 *
 * Text stays text, also where it looks like a date: the function reads it, and says so where it cannot.
 */
export function readArgument(typed: string, param: ParamDoc, surroundings: ReferenceSurroundings): ArgumentReading {
  const text = typed.trim();
  if (text === "" || text === "=") return { kind: "blank" };
  if (text.startsWith("=")) return readExpression(text.slice(1).trim(), param, surroundings);
  if (param.matrix) {
    const bare = readExpression(text, param, surroundings);
    if (bare.kind === "known") return bare;
    const expected = "a table or some cells, such as =Loans[#All] or =Loans!A4:T128";
    const facts = { argument: param.name, given: showGiven(text), expected };
    return { kind: "wrong", sentence: sayProblem({ reason: "argument-not-usable", facts }) };
  }
  if (PLAIN_NUMBER.test(text)) return { kind: "known", formula: text, value: Number(text) };
  if (/^(?:true|false)$/i.test(text)) {
    return { kind: "known", formula: text.toUpperCase(), value: text.toUpperCase() === "TRUE" };
  }
  return { kind: "known", formula: `"${text.replace(/"/g, '""')}"`, value: text };
}

function readExpression(expression: string, param: ParamDoc, surroundings: ReferenceSurroundings): ArgumentReading {
  const value = evaluateReference(expression, surroundings);
  if (value === null) {
    return { kind: "unknown", formula: expression, why: `${param.name} is worked out by the workbook itself` };
  }
  if (typeof value === "number") return { kind: "known", formula: expression, value: param.matrix ? [[value]] : value };
  if (param.matrix) return { kind: "known", formula: expression, value };
  const [first] = value;
  if (value.length === 1 && first?.length === 1) return { kind: "known", formula: expression, value: first[0] };
  const facts = { argument: param.name, given: showGiven(expression), expected: "one cell, not several" };
  return { kind: "wrong", sentence: sayProblem({ reason: "argument-not-usable", facts }) };
}
