/** A note with more sizes than memory holds is refused by name, and the run goes on with the others. */
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { answer } from '../../server/src/cli/engine/job.ts';
import { MOST_SIZES, refuseCrowded } from '../../server/src/cli/files/crowded.ts';
import { DEFAULT_SETTINGS } from '../../server/src/course/index.ts';

const refused = (text: string): string | undefined => {
  try {
    refuseCrowded('a.md', text);
    return undefined;
  } catch (error) {
    return (error as Error).message;
  }
};

describe('a note is refused', () => {
  it.each(['4G ', '4-0 ', 'The 18 G needle. ', '12 Fr\n', '3/0, ', '0.9mm; ', '18-gauge '])(
    'with too many sizes written “%s”, and with no fewer',
    (size) => {
      expect(refused(size.repeat(MOST_SIZES + 1))).toMatch(/^a\.md: holds more than 250000 sizes/);
      expect(refused(size.repeat(MOST_SIZES))).toBeUndefined();
    },
  );

  it.each(['Wash your hands. ', '17 grams, ', '3-05 ', '2024 '])(
    'never for its length alone: “%s”',
    (text) => {
      expect(refused(text.repeat(2 * MOST_SIZES))).toBeUndefined();
    },
  );

  it('counts anew for each note', () => {
    const text = '4-0 '.repeat(MOST_SIZES);
    for (let times = 0; times < 3; times++) expect(refused(text)).toBeUndefined();
  });
});

it('a refused note is a problem of its own', () => {
  const path = join(mkdtempSync(join(tmpdir(), 'crowded-')), 'a.md');
  writeFileSync(path, 'A 4-0 is thicker than a 2-0. '.repeat(MOST_SIZES));
  const setup = { settings: [DEFAULT_SETTINGS], wanted: 'findings', hashed: false } as const;
  expect(answer({ path, settings: 0 }, setup)).toEqual({
    path,
    problem: `${path}: holds more than 250000 sizes, which no note does; check it in parts`,
  });
});
