/** "For a grown man have a 3.0 to 4.0 tracheal tube ready": a size recommended for a kind of patient. */
import type { Note } from '../../notes/model.ts';
import type { Item } from '../text/items.ts';
import { remembered } from '../text/remember.ts';
import { type Group, groups, operand, type Scene, sentenceSpan, spanOf, wordsOf } from '../text/scene.ts';
import { USUAL, type UsualRow } from '../words/usual.ts';
import type { Construction, Reading } from './model.ts';

/** Words that recommend, or that say what is usual. */
const RECOMMENDS =
  /\b(?:usual(?:ly)?|ordinar(?:y|ily)|everyday|average|common(?:ly)?|most|as a rule|are|is given|go(?:es)? in|falls|normal(?:ly)?|typical(?:ly)?|routine(?:ly)?|standard|range|bracket|start(?:ing)?|begin|use|want|needs?|intubate|place|insert|take|takes|choose|pick|go for|open|set up|have|live|lives|works?|fits?|suits?|recommended|goes|get|gets|first choice|learned|for)\b/;
const CONTRARY =
  /\b(?:than|not|never|no|nowhere|nobody|none|neither|nor|hardly|without|\w+n't|too|avoid|instead|unless|wrong|if|why|cannot|versus|vs|compar(?:e|ed|ing|ison)|study|trial|child(?:ren)? and adults?|both)\b/;

export const usual: Construction = {
  id: 'usual',
  needs: () => [{ sizes: 1 }],
  read(scene) {
    const all = groups(scene.items).filter((g) => g.mentions.every((m) => !m.bound));
    if (all.length !== 1) return [];
    const text = wordsOf(scene.sentence);
    if (!RECOMMENDS.test(text) || CONTRARY.test(text)) return [];
    return USUAL.filter((row) => meant(scene, row, all[0]!, text)).map((row) => reading(scene, row, all[0]!));
  },
};

function meant(scene: Scene, row: UsualRow, group: Group, text: string): boolean {
  if (group.sizes[0]!.system !== row.system || !row.patient.test(text)) return false;
  if (row.unless?.test(text) || ofAnimals(scene.note)) return false;
  if (
    USUAL.filter((other) => other.system === row.system && other.patient !== row.patient).some((other) =>
      other.patient.test(text),
    )
  )
    return false;
  const device = group.mentions[0]!.device;
  return (
    (device !== undefined && row.devices.includes(device)) ||
    row.named.test(text) ||
    (device === undefined && row.named.test(scene.headings.join(' ')))
  );
}

/** What is usual for people says nothing in a note on animals. */
const ofAnimals = remembered((note: Note): boolean => ANIMALS.test(note.text));
const ANIMALS =
  /\b(?:veterinar\w+|canine|feline|equine|bovine|ovine|porcine|dogs?|bitch(?:es)?|cats?|tomcats?|horses?|mares?|foals?|pon(?:y|ies)|cattle|cows?|cal(?:f|ves)|sheep|goats?|pigs?|pupp(?:y|ies)|kittens?|rabbits?|ferrets?|labradors?)\b/i;

const first = (items: readonly Item[], group: Group) => items[group.from]!;

function reading(scene: Scene, row: UsualRow, group: Group): Reading {
  return {
    claim: {
      kind: 'category',
      construction: 'usual',
      span: sentenceSpan(scene),
      focus: spanOf(scene, first(scene.items, group), scene.items[group.to]!),
      size: operand(scene, group),
      category: row.id,
      member: true,
    },
    at: group.from,
    from: group.from,
    to: group.to,
  };
}
