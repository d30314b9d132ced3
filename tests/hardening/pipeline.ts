/** The whole analysis of a note, with and without what was kept from earlier readings. */
import { runChecks } from '../../server/src/checks/index.ts';
import type { Finding } from '../../server/src/checks/model.ts';
import { readStatements } from '../../server/src/claims/index.ts';
import { findMentions } from '../../server/src/mentions/index.ts';
import type { Mention } from '../../server/src/mentions/model.ts';
import { type Note, readNote } from '../../server/src/notes/index.ts';
import { readWhole } from '../../server/src/notes/read-markdown.ts';

export interface Outcome {
  readonly mentions: readonly Mention[];
  readonly findings: readonly Finding[];
}

function analyseNote(note: Note): Outcome {
  const mentions = findMentions(note);
  const statements = readStatements(note, mentions);
  return { mentions, findings: runChecks({ note, mentions, statements }) };
}

/** As an editor reads it: stretches that were read before are used again. */
export const incremental = (text: string): Outcome => analyseNote(readNote(text));

/** From scratch: one stretch, nothing used again. */
export const fresh = (text: string): Outcome => analyseNote(readWhole(text));
