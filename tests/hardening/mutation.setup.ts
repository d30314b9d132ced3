/** A fault is tried a thousand times over: a property may take no longer than this, which finds nearly as much. */
import fc from 'fast-check';
import '../support/seed.ts';

fc.configureGlobal({ ...fc.readConfigureGlobal(), interruptAfterTimeLimit: 150 });
