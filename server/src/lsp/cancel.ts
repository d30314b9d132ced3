/** Letting others have their turn: cancellations and newer edits are only seen between two turns. */
import { type CancellationToken, LSPErrorCodes, ResponseError } from 'vscode-languageserver';

/** Longest stretch of work without a pause, ms. */
const STRETCH = 10;

let rested = 0;

/** Ends the request when the client no longer wants it. */
export function check(token: CancellationToken): void {
  if (token.isCancellationRequested) throw new ResponseError(LSPErrorCodes.RequestCancelled, 'cancelled');
}

/** The note is changing: the client keeps what it shows and asks again when it is told to. */
export const notNow = (): ResponseError<void> =>
  new ResponseError(LSPErrorCodes.ContentModified, 'the note is being typed');

/** Pauses when the last pause is long ago, then ends the request if it was cancelled meanwhile. */
export async function breathe(token: CancellationToken): Promise<void> {
  if (performance.now() - rested >= STRETCH) await turn();
  check(token);
}

/** Hands over to the event loop once. */
export async function turn(): Promise<void> {
  await new Promise<void>((resolve) => setTimeout(resolve, 0));
  rested = performance.now();
}
