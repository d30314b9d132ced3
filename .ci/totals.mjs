/** Adds up what the test runner wrote: `node totals.mjs FAILED_STEPS RESULT.json…`. Prints one line, sets the status. */
import { existsSync, readFileSync } from 'node:fs';

const [steps, ...files] = process.argv.slice(2);
const results = files.filter(existsSync).map((file) => JSON.parse(readFileSync(file, 'utf8')));
const sum = (key) => results.reduce((total, result) => total + (result[key] ?? 0), 0);

const passed = sum('numPassedTests');
const skipped = sum('numPendingTests') + sum('numTodoTests');
const failed = sum('numFailedTests');
// A step can fail without a failed test: a build, a type, a suite that did not load. Then the line says so too.
const others = Number(steps) > 0 && failed === 0 ? Number(steps) : 0;
const missing = files.length - results.length;

console.log(`${passed} passed, ${failed + others + missing} failed, ${skipped} skipped`);
process.exitCode = passed > 0 && failed + others + missing + Number(steps) === 0 ? 0 : 1;
