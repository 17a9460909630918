/** The host's error as a page without Excel has to imitate it. */
export class HostError {
  constructor(
    readonly code: string,
    readonly message: string = "",
  ) {}
}
