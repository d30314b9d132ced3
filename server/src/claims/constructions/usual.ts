/**
 * "For a grown man have a 3.0 to 4.0 tracheal tube ready", "pigtail drains come in 28 to 36 Fr": a size recommended for a
 * kind of patient or a use. What it is for may stand anywhere in the clause; the thing also in the heading or just before.
 */
import type { Note } from '../../notes/model.ts';
import type { System } from '../../sizes/model.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { remembered } from '../text/remember.ts';
import { type Group, groups, type Scene, wordsOf } from '../text/scene.ts';
import { FAMILIES, USUAL, type UsualRow } from '../words/usual.ts';
import { classClaim } from './class-claim.ts';
import type { Construction, Reading } from './model.ts';

/** Words that recommend, or that say what is usual. */
const RECOMMENDS =
  /\b(?:usual(?:ly)?|ordinar(?:y|ily)|everyday|average|common(?:ly)?|most|as a rule|are|is given|go(?:es)? in|falls|normal(?:ly)?|typical(?:ly)?|routine(?:ly)?|standard|range|bracket|start(?:ing)?|begin|use|want|needs?|intubate|place|insert|take|takes|choose|pick|go for|open|set up|have|live|lives|works?|fits?|suits?|recommended|goes|get|gets|first choice|learned|for)\b/;
/** One patient's story: what was done tells nothing of what is usual. */
const STORY =
  /\b(?:was|were|had|went|came|ended|arrived|left|found|gave|took|put in|placed|kept|changed|pulled|tonight|today|this morning|started|began|happened|stopped|worked|failed|turned|tried|used to|ran|did|said|told|asked|stood|lay|sat|bed \d+|she|he|her|his|him|has)\b/;
/** What has a date happened once, whatever else the sentence recommends. */
const DATED =
  /\b(?:yesterday|last (?:night|week|month|year|time|shift)|(?:on|last|this) (?:mon|tues|wednes|thurs|fri|satur|sun)day(?!s)|the other (?:day|night)|once had|in (?:19|20)\d\d)\b/;
/** "A 5.0 tube in a small adult feels like a straw": what becomes of it is told, not what is taken. */
const SUBJECT = /^(?:an?|the|this|that) # /;
const CONTRARY =
  /\b(?:than|not|never|no|nowhere|nobody|none|neither|nor|hardly|without|\w+n't|too|avoid|instead|rather|unlike|unless|wrong|why|cannot|versus|vs|compar(?:e|ed|ing|ison)|study|trial|child(?:ren)? and adults?|both|available|exists?|cat[ae]logue|stocks?|might|could|rarely|seldom|sometimes|occasionally|formerly|once|except|exceptions?|remov\w+|replac\w+|swap\w*|exchang\w+|upgrad\w+|emergency only|last resort|hubs?|only (?:a|an|the|have|had)|even)\b/;
/** Negations that only shut out the other side of the size given, and none that the thing spoken of lacks. */
const HARMLESS =
  /\b(?:and |but )?(?:not|no|nothing|never) (?:less|more|smaller|larger|bigger|thinner|thicker|finer|wider|narrower)(?= [.,;!)]|$)|\bno (?:clots?|stones?|tape|hurry|time|scan|stricture)\b|\b(?:anything|nothing) (?:else|less|smaller|bigger|larger)\b|\bas opposed to \w+\b/g;

export const usual: Construction = {
  id: 'usual',
  needs: () => [{ sizes: 1 }],
  read(scene) {
    if (scene.items.filter(({ colour }) => colour !== undefined).length > 2) return [];
    const clauses = clausesOf(scene);
    return clauses.flatMap(({ group, text }) => {
      if (group.mentions.some((m) => m.bound)) return [];
      const plain = text.replace(HARMLESS, ' ');
      if (CONTRARY.test(plain) || supposed(plain)) return [];
      if (DATED.test(text) || (!RECOMMENDS.test(text) && (STORY.test(text) || SUBJECT.test(text)))) return [];
      // The first row is the one that says most of the use.
      const [row] = rowsFor(scene, group, text);
      return row ? [reading(scene, row, group)] : [];
    });
  },
};

/** A size and the words it stands among. */
interface Clause {
  readonly group: Group;
  readonly text: string;
}

const LENGTHS = /^(?:millimetre|inch|wire-inch)$/;

/** The whole sentence when one size is all it names; else each stretch between commas that has a size to itself. */
function clausesOf({ items }: Scene): Clause[] {
  const all = groups(items).filter(({ sizes }) => !LENGTHS.test(sizes[0]!.system));
  const main = all.length === 2 ? spread(all) : undefined;
  const [only] = main ? [main] : all;
  if (!only) return [];
  if (main || all.length === 1)
    return [{ group: only, text: wordsOf({ items: items.slice(0, likenedFrom(items, only)) }) }];
  const clauses: Clause[] = [];
  let from = 0;
  for (let i = 0; i <= items.length; i++) {
    if (i < items.length && !/^[,;]$/.test(items[i]!.word)) continue;
    const own = all.filter((g) => g.from >= from && g.to < i);
    const whole = !all.some((g) => g.from < i && g.to > i);
    if (own.length === 1 && whole)
      clauses.push({ group: own[0]!, text: wordsOf({ items: items.slice(from, i) }) });
    if (whole) from = i + 1;
  }
  return clauses;
}

/** "…, finer than most spinal needles": where a remark begins that sets the size beside something else. */
function likenedFrom(items: readonly Item[], { to }: Group): number {
  const at = items.findIndex(
    ({ word }, i) =>
      i > to &&
      word === ',' &&
      items.slice(i + 1, i + 4).some(({ magnitude }, k, near) => {
        const next = near[k + 1] ?? items[i + 2 + k];
        return magnitude?.degree === 'comparative' && next?.word === 'than';
      }),
  );
  return at < 0 ? items.length : at;
}

/** "Usually an 8, span 6 to 24 French": a range, and one size out of it in passing. */
function spread(all: readonly Group[]): Group | undefined {
  const range = all.find((g) => isRange(g));
  const other = all.find((g) => g !== range);
  if (!range || !other || other.sizes.length !== 1 || isRange(other)) return undefined;
  const [a, b] = range.sizes.map(({ value }) => value);
  const value = other.sizes[0]!.value;
  const like = other.sizes[0]!.system === range.sizes[0]!.system;
  return like && value >= Math.min(a!, b!) && value <= Math.max(a!, b!) ? range : undefined;
}

const isRange = ({ mentions }: Group): boolean => mentions.length === 1 && mentions[0]!.kind === 'range';

/** "If all you have is a 22 G": the size is part of what is supposed. "If she is bleeding, put in a 22 G" says when. */
const supposed = (text: string): boolean => {
  const at = text.search(/\bif\b/);
  if (at < 0) return false;
  const clause = text.slice(at).split(/,|#/)[0]!;
  return text[at + clause.length] === '#' || at > text.indexOf('#') || /^if (?:possible|you)\b/.test(clause);
};

const BY_SYSTEM: ReadonlyMap<System, readonly UsualRow[]> = new Map(
  USUAL.map(({ system }) => [system, USUAL.filter((row) => row.system === system)]),
);

/** Rows that the words mean; where two kinds of patient are named, none. */
function rowsFor(scene: Scene, group: Group, text: string): UsualRow[] {
  const system = group.sizes[0]!.system;
  let near: Near | undefined;
  const nearby = (): Near => {
    near ??= remembering(scene);
    return near;
  };
  const rows = (BY_SYSTEM.get(system) ?? []).filter((row) => meant(scene, row, group, text, nearby));
  return rows.filter(
    (row) =>
      !row.unless?.test(text) &&
      !(row.elsewhere && servesElsewhere(scene, row.elsewhere)) &&
      !rows.some((other) => other !== row && other.thing === row.thing) &&
      !parted(text, row) &&
      !ofAnimals(scene.note),
  );
}

const servesElsewhere = ({ passage, headings }: Scene, words: RegExp): boolean =>
  words.test(passage.text.slice(0, 2000)) || headings.some((heading) => words.test(heading));

/** "Obstruction 16-18 Fr, feeding 8-10 fine-bore": between the size and the use stands a number that is nearer to it. */
function parted(text: string, { patient }: UsualRow): boolean {
  const [size, use] = [text.indexOf('#'), patient.exec(text)];
  if (!use) return false;
  const between =
    use.index > size ? text.slice(size + 1, use.index) : text.slice(use.index + use[0].length, size);
  return /(?:^| )\d{1,2}(?:\.\d)?(?: ?[-–] ?\d{1,2})?(?= |$)(?! (?:kg|kilos?|years?|year-old|months?|weeks?|days?|mm|cm|ml|minutes?|hours?|%|per|\.))/.test(
    between,
  );
}

/** Words around the sentence: headings and lead-in, and the question or the sentence it goes on from. */
interface Near {
  readonly headings: string;
  readonly asked: string;
}

function remembering(scene: Scene): Near {
  const last = scene.before.at(-1) ?? scene.context.at(-1);
  const goesOn = /^(?:they|it|these|those|that|this|there|here|ones?|size|#)$/.test(
    scene.items[0]?.kind === 'size' ? '#' : (scene.items[0]?.word ?? ''),
  );
  const asked = last && (last.close === '?' || (goesOn && scene.before.length > 0)) ? joined(last.items) : '';
  const lead = scene.lead && scene.passage.list ? joined(scene.lead.items) : '';
  const sized = last?.items.some((item) => item.kind === 'size') === true;
  return {
    headings: `${scene.headings.join(' ')} ${lead}`,
    asked: sized ? '' : asked,
  };
}

const RECENT = 4;
/** The few sentences before, when they speak of one thing only. */
function recentIn(scene: Scene): string {
  const text = [...scene.context, ...scene.before]
    .slice(-RECENT)
    .map(({ items }) => joined(items))
    .join(' . ');
  return FAMILIES.filter((family) => family.test(text)).length === 1 ? text : '';
}

function meant(scene: Scene, row: UsualRow, group: Group, text: string, nearby: () => Near): boolean {
  const device = group.mentions[0]!.device;
  const own = device !== undefined && row.devices.includes(device);
  const thing = own || row.named.test(text);
  if (row.patient.test(text)) {
    return (
      thing ||
      row.named.test(nearby().asked) ||
      ((device === undefined || row.devices.length === 0) &&
        (row.named.test(nearby().headings) || (row.system === 'french' && row.named.test(recentIn(scene)))))
    );
  }
  const near = nearby();
  if (near.asked === '' || !row.patient.test(near.asked) || row.unless?.test(near.asked)) return false;
  return (
    (thing || row.named.test(near.asked)) && !/\b(?:not|never|too|wrong|avoid|worst|least)\b/.test(near.asked)
  );
}

/** What is usual for people says nothing in a note on animals. */
export const ofAnimals = remembered((note: Note): boolean => ANIMALS.test(note.text));
const ANIMALS =
  /\b(?:veterinar\w+|canine|feline|equine|bovine|ovine|porcine|dogs?|bitch(?:es)?|cats?|tomcats?|horses?|mares?|foals?|pon(?:y|ies)|cattle|cows?|cal(?:f|ves)|sheep|goats?|pigs?|pupp(?:y|ies)|kittens?|rabbits?|ferrets?|labradors?)\b/i;

function reading(scene: Scene, row: UsualRow, group: Group): Reading {
  const ranged =
    isRange(group) ||
    (group.sizes.length === 2 && /^(?:between|from)$/.test(scene.items[group.from - 1]?.word ?? ''));
  return {
    claim: classClaim(scene, 'usual', group, row.id, ranged),
    at: group.from,
    from: group.from,
    to: group.to,
    own: true,
  };
}
