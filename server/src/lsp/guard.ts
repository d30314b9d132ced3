/** A handler that fails must not take the others with it: the failure is logged and the request gets an answer. */
import { type CancellationToken, type Connection, ResponseError } from 'vscode-languageserver';

export type Guard = <P, R>(
  name: string,
  empty: R,
  run: (params: P, token: CancellationToken) => R | Promise<R>,
) => (params: P, token: CancellationToken) => Promise<R>;

/** Wraps handlers of one connection. An answer "cancelled" passes; anything else becomes the empty answer. */
export function guardFor(connection: Connection): Guard {
  return (name, empty, run) => async (params, token) => {
    try {
      return await run(params, token);
    } catch (error) {
      if (error instanceof ResponseError) throw error;
      connection.console.error(`${name}: ${error instanceof Error ? (error.stack ?? error.message) : error}`);
      return empty;
    }
  };
}
