import { LexerTreeBuilder } from "@univerjs/engine-formula";

/**
 * A half-typed "[" leaves the engine's reader (0.25.1) inside a bracket, and every later formula fails until the page
 * is loaded again: its reset forgets that one state, so it is reset here too.
 */
export function mendLexer(): void {
  const prototype = LexerTreeBuilder.prototype as unknown as { _resetTemp(): void; _squareBracketState: number };
  const reset = prototype._resetTemp;
  prototype._resetTemp = function (this: typeof prototype) {
    reset.call(this);
    this._squareBracketState = 0;
  };
}
