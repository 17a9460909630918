/** A file to be saved: nothing of it goes anywhere else. */
export interface HandOverFile {
  /** Safe on every system, with its ending. */
  readonly name: string;
  /** Its media type. */
  readonly type: string;
  readonly content: string | Uint8Array;
}
