/** Where a connection stands between its first message and its last; what comes out of turn is refused. */
import { ErrorCodes, ResponseError } from 'vscode-languageserver';

export class Phase {
  private now: 'new' | 'open' | 'over' = 'new';

  /** The client introduces itself: once. */
  begin(): void {
    if (this.now !== 'new') throw new ResponseError(ErrorCodes.InvalidRequest, 'already initialized');
    this.now = 'open';
  }

  /** Throws the error with which a request is answered that comes too early or too late. */
  expectOpen(): void {
    if (this.now === 'new') throw new ResponseError(ErrorCodes.ServerNotInitialized, 'not yet initialized');
    if (this.now === 'over') throw new ResponseError(ErrorCodes.InvalidRequest, 'already shut down');
  }

  get over(): boolean {
    return this.now === 'over';
  }

  end(): void {
    this.expectOpen();
    this.now = 'over';
  }
}
