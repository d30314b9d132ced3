/** Keys of statements to be called true or false. */
import { sourceSpan } from '../notes/index.ts';
import type { Span } from '../notes/model.ts';
import type { Item } from './text/items.ts';
import { remembered } from './text/remember.ts';
import type { Scene } from './text/scene.ts';
import type { Sentence } from './text/sentences.ts';

/** A mark beside a true/false statement. */
export type Keyed = 'true' | 'false';

const TRUE_KEY =
  /^[([*]?\s*(?:(?:(?:right |correct )?answer|ans|keyed|key|a)\s*[:=.→]?\s*)?(?:true|t|correct|right|fact|agree)[\s.)\]*]*$/;
const FALSE_KEY =
  /^[([*]?\s*(?:(?:(?:right |correct )?answer|ans|keyed|key|a)\s*[:=.→]?\s*)?(?:false|f|incorrect|wrong|untrue|fiction|myth|disagree)[\s.)\]*]*$/;

/** The key of a true/false item: "(False.)" after it, or "T"/"F" in front, when the place says true or false. */
export const keyOf = remembered((scene: Scene): Keyed | undefined => {
  if (!scene.truthItem) return undefined;
  if (scene.key) return scene.key;
  const own = trailingKey(scene.items);
  const next = scene.after[0];
  if (own) return own;
  return next && !/[☐☒☑]/u.test(scene.passage.text.slice(next.start, Math.min(next.end, next.start + 24)))
    ? (keyText(next.items.map((item) => item.word).join(' ')) ?? reasoned(next))
    : undefined;
});

/** "False – the number runs the other way.": the key, and why. */
function reasoned({ items }: Sentence): Keyed | undefined {
  const [key, mark] = /^[–—-]$/.test(items[0]?.word ?? '') ? items.slice(1) : items;
  if (key?.capital !== true || !REASONS.test(mark?.word ?? '')) return undefined;
  // "Right, but the other way round.", "Correct: narrower.": agreed to, and turned.
  if (mark!.word === ':' && /^(?:right|correct)$/.test(key.word)) return undefined;
  if (items.some(({ word }) => /^(?:but|except|although|though|other|reverse|nearly|almost|if)$/.test(word)))
    return undefined;
  return keyText(key.word);
}
const REASONS = /^(?:[–—:;,.(-]|because|as|since)$/;

/** Where the key of a true/false statement stands, for a finding to point at. */
export function keySpan(scene: Scene): Span | undefined {
  if (keyOf(scene) === undefined) return undefined;
  if (scene.keyAt) return scene.keyAt;
  const next = scene.after[0];
  const apart = scene.key === undefined && !trailingKey(scene.items) && next;
  const { start, end } = apart ? next : scene.sentence;
  return sourceSpan(scene.passage, { start, end });
}

function trailingKey(items: readonly Item[]): Keyed | undefined {
  if (severalVerdicts(items)) return undefined;
  for (const count of [1, 2, 3, 4, 5]) {
    const key = keyText(
      items
        .slice(-count)
        .map((item) => item.word)
        .join(' '),
    );
    if (/^(?:or|\/)$/.test(items.at(-count - 1)?.word ?? '')) continue;
    const apart = items.at(-count - 1)?.kind === 'punctuation' || count > 1;
    if (key && apart) return key;
  }
  return undefined;
}

/** "12 Fr = 12 mm (wrong), 12 Fr = 4 mm (right)": each its own; "(write T or F)": none. */
const severalVerdicts = (items: readonly Item[]): boolean =>
  items.filter(
    ({ word }, i) =>
      /^[(→⇒]$/.test(items[i - 1]?.word ?? '') &&
      /^[);,.]$/.test(items[i + 1]?.word ?? ';') &&
      keyText(word) !== undefined,
  ).length > 1 ||
  items.at(-3)?.word === 'or' ||
  items.at(-2)?.word === 'or';

function keyText(text: string): Keyed | undefined {
  const clean = text
    .replace(/[\s\uFFFC]+/g, ' ')
    .replace(/[—–→=>:-]\s*/g, (mark) => (mark.startsWith(':') ? mark : ''))
    .trim();
  if (TRUE_KEY.test(clean)) return 'true';
  return FALSE_KEY.test(clean) ? 'false' : undefined;
}
