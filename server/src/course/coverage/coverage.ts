/** Which topics a note teaches, and what a whole course leaves out. */
import type { Span } from '../../notes/model.ts';
import type { Analysis } from '../analyse.ts';
import { TOPICS, type Topic, teaches } from './topics.ts';

/** A part of a topic said in a note; the first place only. */
export interface Taught {
  readonly topic: string;
  readonly part: number;
  readonly span: Span;
}

export function taughtIn({ statements }: Analysis): Taught[] {
  const said = statements.filter(teaches);
  return TOPICS.flatMap(({ id, parts }) =>
    parts.flatMap((part, index) => {
      const first = said.find(({ claim }) => part(claim));
      return first ? [{ topic: id, part: index, span: first.claim.focus }] : [];
    }),
  );
}

/** `partly`: one side of a paradox is taught. */
export type Extent = 'taught' | 'partly' | 'missing';

export function extentOf({ id, parts }: Topic, taught: ReadonlySet<string>): Extent {
  const said = parts.filter((_, index) => taught.has(`${id} ${index}`)).length;
  if (said === parts.length) return 'taught';
  return said > 0 ? 'partly' : 'missing';
}

export const partKey = ({ topic, part }: Pick<Taught, 'topic' | 'part'>): string => `${topic} ${part}`;
