#!/usr/bin/env node
/** The command line. */
import { main } from '../cli/index.ts';

main(process.argv.slice(2)).then((status) => {
  process.exitCode = status;
});
