/** Ends a run early with a status, when there is nothing more to say: the reader closed the pipe. */
export class Stop extends Error {
  override readonly name = 'Stop';
  readonly status: number;

  constructor(status: number) {
    super(`stop with ${status}`);
    this.status = status;
  }
}
