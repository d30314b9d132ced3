/** Makes one way to take an unclear size. */
import type { Size } from '../sizes/model.ts';
import { type Phrase, tell } from '../texts/index.ts';
import type { Reading } from './model.ts';

/** `write`: what would say it without doubt; without `size` it is no size. */
export const reading = (meant: Phrase, write: string, size?: Size): Reading => ({
  ...(size === undefined ? {} : { size }),
  words: tell(meant),
  meant,
  write,
});
