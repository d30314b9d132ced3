/** The heap as it is after a collection. */
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';

setFlagsFromString('--expose-gc');
// Otherwise each collection may also drop code that has not run for a while, which is more than what is looked for.
setFlagsFromString('--no-flush-bytecode');
const collect = runInNewContext('gc') as () => void;

/** Heap in use, MB, after a collection. */
export function heapNow(): number {
  collect();
  return process.memoryUsage().heapUsed / 1e6;
}
