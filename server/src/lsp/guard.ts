/** A handler that fails must not take the others with it: the failure is logged and the request gets an answer. */
import { type CancellationToken, type Connection, ErrorCodes, ResponseError } from 'vscode-languageserver';
import { wellFormed } from './parameters.ts';
import type { Phase } from './phase.ts';

export type Guard = <P, R>(
  name: string,
  empty: R,
  run: (params: P, token: CancellationToken) => R | Promise<R>,
) => (params: P, token: CancellationToken) => Promise<R>;

/**
 * Wraps handlers of one connection. What comes out of turn or lacks its parameters is refused, an answer "cancelled"
 * passes; anything else that goes wrong becomes the empty answer.
 */
export function guardFor(connection: Connection, phase: Phase): Guard {
  return (name, empty, run) => async (params, token) => {
    phase.expectOpen();
    if (!wellFormed(name, params))
      throw new ResponseError(
        ErrorCodes.InvalidParams,
        `${name}: parameters are missing or of the wrong shape`,
      );
    try {
      return await run(params, token);
    } catch (error) {
      if (error instanceof ResponseError) throw error;
      connection.console.error(`${name}: ${error instanceof Error ? (error.stack ?? error.message) : error}`);
      return empty;
    }
  };
}
