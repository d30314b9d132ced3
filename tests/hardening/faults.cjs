/**
 * Loaded into the command line before it starts: the file call that SIZES_FAULT_AT counts to fails in the way that
 * SIZES_FAULT says. Calls that only read are left alone; those of the process's own output too.
 */
const fs = require('node:fs');

const at = Number(process.env.SIZES_FAULT_AT);
const way = process.env.SIZES_FAULT;
const CALLS = [
  'openSync',
  'writeSync',
  'fsyncSync',
  'fchmodSync',
  'renameSync',
  'closeSync',
  'unlinkSync',
  'chownSync',
];
let count = 0;
/** Descriptors opened to be read only. */
const reading = new Set();

const kill = () => {
  process.kill(process.pid, 'SIGKILL');
  for (;;);
};

for (const name of CALLS) {
  const own = fs[name];
  fs[name] = (...args) => {
    const standard = typeof args[0] === 'number' && args[0] < 3;
    if (name === 'openSync' && !/[wax+]/.test(String(args[1]))) {
      const opened = own(...args);
      reading.add(opened);
      return opened;
    }
    const reads = name === 'closeSync' && reading.delete(args[0]);
    if (standard || reads || ++count !== at) return own(...args);
    if (way === 'half') {
      if (name === 'writeSync') own(args[0], args[1].subarray(0, Math.floor(args[1].length / 2)));
      else own(...args);
      kill();
    }
    throw Object.assign(new Error(`${way}: made up`), { code: way });
  };
}

// Tells the test that no call was left to fail.
process.on('exit', () => {
  if (count < at) process.exitCode = 99;
});
