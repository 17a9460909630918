/** Something of the workbook that an argument can take, as it is offered and as it is typed. */
export interface ArgumentOption {
  readonly group: string;
  readonly label: string;
  /** With its =. */
  readonly text: string;
}
