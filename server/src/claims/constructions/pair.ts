/**
 * Two sizes and one comparing word without "than": an exchange ("from 16 Fr to 14 Fr for less trauma"),
 * a choice ("the 16 rather than the 14, for more flow"), or a definite phrase ("the thicker wire of the pair").
 */
import type { Item } from '../text/items.ts';
import { type Measured, measuredWords } from '../text/magnitudes.ts';
import { distinct, type Group, groups, type Scene, sameSizes } from '../text/scene.ts';
import { BE, definite, hasForeignSubject } from './definite.ts';
import { type Exchange, exchangeIn } from './exchange.ts';
import type { Construction, Reading } from './model.ts';
import { emit } from './of-two.ts';
import { orderCue } from './order.ts';
import { clauseStart } from './than.ts';

export const pair: Construction = {
  id: 'pair',
  needs: () => [{ sizes: 1, holds: ['compared'] }],
  read(scene) {
    const all = distinct(groups(scene.items));
    const words = measuredWords(scene.items).filter(
      (m) =>
        m.degree === 'comparative' &&
        m.axis !== 'other' &&
        m.axis !== 'number' &&
        !m.idiom &&
        !m.excess &&
        !boundToThan(scene.items, m),
    );
    // "14 G → 16 G → 18 G: thicker to thinner" is an order, read as such.
    if (words.length === 2 && orderCue(scene.items) && groups(scene.items).length >= 2) return [];
    const exchange = exchangeIn(scene.items);
    return words.flatMap((word) => readWord(scene, word, all, exchange));
  },
};

const THAN_STOPS = new Set([';', '.', 'because', 'since', 'so', 'but', '—']);

/** The word has a "than" of its own further on in its clause. */
function boundToThan(items: readonly Item[], word: Measured): boolean {
  for (let i = word.at + 1; i < items.length && i <= word.at + 14; i++) {
    if (THAN_STOPS.has(items[i]!.word)) return false;
    if (items[i]!.word === 'than') return items[i - 1]!.word !== 'rather';
  }
  return false;
}

function readWord(
  scene: Scene,
  word: Measured,
  all: readonly Group[],
  exchange: Exchange | undefined,
): Reading[] {
  if (exchange) {
    // "It is the 16 G, not the 22 G, that is wider": what is set aside by "not" is never the one spoken of.
    const own = exchange.negates ? undefined : ownSubject(scene, word, [exchange.given, exchange.chosen]);
    const subject = own ?? exchange.chosen;
    if (hasForeignSubject(scene, word) || newSubject(scene.items, word)) return [];
    if (newPair(scene, exchange, word) || recalled(scene.items, word)) return [];
    if (handed(scene.items.slice(word.to + 1, exchange.chosen.from))) return [];
    if (UNMET.test(scene.items[word.at - 1]?.word ?? '')) return [];
    if (exchange.negates && setOff(scene.items, word)) return [];
    const other = sameSizes(subject, exchange.chosen) ? exchange.given : exchange.chosen;
    const read = emit(scene, 'exchange', subject, other, word);
    return exchange.negates ? read.map((reading) => ({ ...reading, own: true })) : read;
  }
  return definite(scene, word, all);
}

/** "because the smaller one blocked": one of the two is meant, not told about. */
const recalled = (items: readonly Item[], word: Measured): boolean => {
  const next = items[word.to + 1];
  return (
    /^(?:because|since|as|when|after|once) the$/.test(
      items
        .slice(Math.max(0, word.at - 2), word.at)
        .map((item) => item.word)
        .join(' '),
    ) &&
    (next?.word === 'one' || next?.deviceNoun === true)
  );
};

/** "from 4-0 to 6-0 is finer; from 0 to 2 is thicker": two other sizes follow a semicolon, before the word. */
const newPair = ({ items }: Scene, { given, chosen }: Exchange, word: Measured): boolean => {
  const last = Math.max(given.to, chosen.to);
  const cut = items.findIndex((item, i) => i > last && item.word === ';');
  return cut > 0 && cut < word.at && items.slice(cut, word.at).filter((item) => item.mention).length > 1;
};

/** "changed for a 24 G as nothing bigger would go in": what there was none of. */
const UNMET = /^(?:nothing|anything|none)$/;

/** "asked for a finer thread and was handed 2-0 instead of 5-0": the wish and what came are not the same. */
const handed = (between: readonly Item[]): boolean =>
  between.some((item) => /^(?:handed|given|got|received|sent|brought|gave|served)$/.test(item.word));

/** The size the word stands on: "a thinner 14 Fr", or "because three-oh is the finer strand". */
const turnsTo = (item: Item) =>
  ['which', 'whose', 'that', 'because', 'since', 'as', ';', ':', 'so'].includes(item.word);

function ownSubject(scene: Scene, word: Measured, of: readonly Group[]): Group | undefined {
  const all = groups(scene.items);
  const after = all.find((g) => g.from > word.at && g.from <= word.at + 3);
  if (after && !scene.items.slice(word.at + 1, after.from).some(breaksNoun))
    return of.find((g) => sameSizes(g, after));
  const clause = clauseStart(scene.items, word.at);
  const before = all.filter((g) => g.to < word.at && g.from >= clause).at(-1);
  if (!before || before.to < word.at - 7) return undefined;
  // "Using A rather than B leaves …": what follows the pair is said of the choice, not of its second half.
  const partner = of.some((g) => g.from === before.from && g.to === before.to);
  const tail = scene.items.slice(before.to + 1, word.at);
  // "Take A over B, as it is wider": the pronoun stands for the choice as well.
  if (partner && (!tail.some(turnsTo) || tail.some(({ word: one }) => IT.test(one)))) return undefined;
  if (!tail.some((item) => BE.has(item.word))) return undefined;
  return of.find((g) => sameSizes(g, before));
}

const IT = /^(?:it|it's|they)$/;

const breaksNoun = (item: Item) =>
  item.kind === 'punctuation' || ['for', 'of', 'and', 'in', 'to', 'so', 'with', 'from'].includes(item.word);

/** "…, and the larger one was still sealed": the phrase opens a statement of its own. */
const newSubject = (items: readonly Item[], word: Measured): boolean =>
  items[word.at - 1]?.word === 'the' &&
  items[word.to + 1]?.deviceNoun === true &&
  /^(?:is|are|was|were|went|has|had|stayed)$/.test(items[word.to + 2]?.word ?? '') &&
  items.slice(Math.max(0, word.at - 3), word.at).some((item) => item.kind === 'punctuation');

/** "…, the larger one in the sink": another thing than the two. */
const setOff = (items: readonly Item[], word: Measured): boolean =>
  items[word.at - 1]?.word === 'the' && items[word.at - 2]?.word === ',';
