/** "French ÷ 3 = millimetres", "multiply the French by three", "French is the circumference". */
import { finds, firstMatch } from '../../notes/patterns.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { changed } from '../text/place.ts';
import type { Scene } from '../text/scene.ts';
import { NEGATIONS } from '../words/changes.ts';
import { factor, NUMBERS } from './factor.ts';
import { gaugeNames, HOLLOW_WORDS } from './gauge-names.ts';
import { readMetric } from './metric-rule.ts';
import type { Construction, Reading } from './model.ts';
import { inName } from './no-operation.ts';
import { ofSheaths } from './of-sheaths.ts';
import { ownInside } from './own-inside.ts';
import { ruleClaim } from './rule-claim.ts';
import { sameBore } from './same-bore.ts';
import { anotherScale, scaleTold } from './scale-told.ts';
import { scaleRule } from './scales.ts';
import { sheathed } from './sheathed.ts';
import { sizedBy } from './sized-by.ts';
import { toldSide } from './told-side.ts';

type Operation = 'times' | 'over';

const DIVIDE = new Set([
  '÷',
  '/',
  'divide',
  'divided',
  'dividing',
  'over',
  'third',
  'divides',
  'halve',
  'halves',
  'halving',
  'half',
]);
const MULTIPLY = new Set([
  '×',
  '*',
  'x',
  'multiply',
  'multiplied',
  'multiplying',
  'timesing',
  'times',
  'triple',
  'tripled',
  'thrice',
  'twice',
  'treble',
  'tripling',
  'double',
  'doubled',
  'doubling',
]);
const MM = /^(?:mm|millimet(?:re|er)s?|millimetric)$/;
/** Sides, metric numbers and the devices whose numbers are told: with none of them the sentence states no rule. */
const SUBJECTS =
  /\b(?:outer|outside|external|inner|inside|internal)\b|^(?:lumen|bores?|hub|metric|ep|mm|millimet\w+|inch(?:es)?|thousandths|sheaths?|introducers?|guidewires?|endotracheal|tracheal|ett|double-lumen)(?:'s)?$/;

export const formula: Construction = {
  id: 'formula',
  needs: () => [
    { holds: ['system'] },
    { like: SUBJECTS },
    { sizes: 1, words: HOLLOW_WORDS },
    { words: HOLLOW_WORDS, also: /^(?:needles?|cannula[se]?)$/ },
    { holds: ['answers'], words: [...DIVIDE, ...MULTIPLY] },
  ],
  leaning: true,
  read(scene) {
    const strict = [...sheathed(scene), ...sizedBy(scene), ...ownInside(scene), ...sameBore(scene)].slice(
      0,
      1,
    );
    const sized = strict.length > 0 ? strict : toldSide(scene);
    if (sized.length > 0) return [...sized, ...anotherScale(scene, sized)];
    const rule = ofScale(scene);
    if (rule.length > 0) return rule;
    const told = answered(scene);
    if (told.length > 0) return told;
    const scale = scaleRule(scene);
    if (scale.length > 0) return scale;
    const named = gaugeNames(scene);
    return named.length > 0 ? named : scaleTold(scene);
  },
};

/** "Want French from millimetres? Divide by three.": the question says what comes out. */
function answered(scene: Scene): Reading[] {
  const { items } = scene;
  const question = scene.before.at(-1) ?? scene.context.at(-1);
  const lead = /^(?:you|we|just|simply)$/.test(items[0]?.word ?? '') ? 1 : 0;
  const first = items[lead];
  if (!first || !operationOf(first) || items.length > 7 + lead || question?.close !== '?') return [];
  const french = (all: readonly Item[]) => all.some((item) => item.system === 'french');
  const named = french(question.items) && lead === 0;
  if (question.items.length > 14 || !(named || (french(items) && turnsIt(question.items)))) return [];
  const asked = question.items.filter((item) => item.word !== '?');
  const verb = first.word === 'times' ? { ...first, word: 'multiply' } : first;
  const shift = asked.length - lead;
  const whole = changed(scene, { items: [...asked, verb, ...items.slice(lead + 1)] });
  return ofScale(whole).flatMap((read) =>
    read.at >= asked.length ? [{ ...read, at: read.at - shift, from: 0, to: read.to - shift }] : [],
  );
}

/** "And how do I turn it into millimetres?", of a French number that the answer names. */
const turnsIt = (items: readonly Item[]): boolean =>
  /\bhow (?:do|does|can|would|should) (?:i|you|we|one) (?:turn|make|get|convert|change) (?:it|that|this|them) (?:in)?to (?:mm|millimet\w+)(?: |$)/.test(
    words(items),
  ) && !items.some((item) => item.system !== undefined && item.system !== 'french');

function ofScale(scene: Scene): Reading[] {
  const { items } = scene;
  const french = items.findIndex((item) => item.system === 'french');
  if (french >= 0) return readFrench(scene, french);
  const gauge = items.findIndex((item) => item.system === 'needle-gauge');
  return gauge >= 0 ? readGauge(scene, gauge) : readMetric(scene);
}

function readFrench(scene: Scene, french: number): Reading[] {
  const { items } = scene;
  const mm = items.findIndex((item) => MM.test(item.word));
  const operations = items.flatMap((item, i) => (operationOf(item) && !inName(items, i) ? [i] : []));
  // "Kid: age/4 + 4; double-lumen ones are French": what is done to an age is another rule.
  if (operations.length > 0 && items.some(({ word }) => /^\(?age(?:$|\/)/.test(word))) return [];
  const at = operations[0] ?? -1;
  // "Half a French is a sixth of a millimetre": a part of the unit, not an operation on it.
  if (/\b(?:half|quarter|third) (?:of )?(?:an?|one) (?:french|fr|charri)/.test(words(items))) return [];
  // "Doubling the French doubles the diameter": how the two go together.
  if (/\b(doubl|tripl|halv)\w*\b.*\b\1\w*/.test(words(items))) return [];
  // "Halve nothing: divide by three": two rules in one sentence are told apart by nobody.
  const factors = new Set(operations.map((i) => factor(items, i)));
  if (operations.length > 1 && factors.size > 1) return [];
  const number = at < 0 ? undefined : factor(items, at);
  if (at >= 0 && number !== undefined && (mm >= 0 || DIAMETER.test(words(items)))) {
    const id = frenchFormula(items, french, mm, at, number);
    return id ? [reading(scene, 'french', id, at, Math.min(french, at), Math.max(french, at))] : [];
  }
  const step = stepOf(items);
  if (step) return [reading(scene, 'french', step, french, 0, items.length - 1)];
  const plus = items.findIndex((item) => item.word === 'plus' || item.word === '+' || item.word === 'minus');
  if (plus > 0 && mm >= 0 && NUMBERS.has(items[plus + 1]?.word ?? '') && Math.abs(plus - french) <= 8)
    return [reading(scene, 'french', 'french-plus', plus, Math.min(french, plus), Math.max(french, plus))];
  return named(scene, french);
}
const DIAMETER = /\b(?:diameter|radius|outside|across)\b/;

const operationOf = (item: Item): Operation | undefined =>
  DIVIDE.has(item.word) ? 'over' : MULTIPLY.has(item.word) ? 'times' : undefined;
const words = (items: readonly Item[]) => joined(items);

/**
 * Which side the operation acts on: the operand of the operation is the nearer of French and millimetre words;
 * the result is the other. "to get millimetres, divide French by 3"; "French is three times the diameter".
 */
function frenchFormula(
  items: readonly Item[],
  french: number,
  mm: number,
  at: number,
  number: number,
): string | undefined {
  const operation = operationOf(items[at]!)!;
  const text = words(items);
  // The rule for suction catheters doubles the tube, not the French.
  if (/\b(?:tube|tracheal|tracheostomy|suction)\b/.test(text) && /^(?:doubl|twice)/.test(items[at]!.word))
    return undefined;
  if (/\bradius\b/.test(text)) return number === 3 ? 'french-is-radius' : undefined;
  if (/\bcircumference\b/.test(text)) return undefined;
  // "The French number is the inner diameter times three": right sum, wrong diameter. A sheath is measured inside.
  if (/\b(?:inner|inside|internal) (?:diameter|width|in (?:mm|millimet\w+))\b/.test(text))
    return number === 3 && !/\b(?:sheath|introducer|guiding|outer|outside)\b/.test(text)
      ? 'french-is-inner'
      : undefined;
  const size = mm >= 0 ? mm : items.findIndex((item) => DIAMETER.test(item.word));
  const onFrench = actsOnFrench(items, french, size, at);
  if (onFrench === undefined) return undefined;
  if (Math.abs(number - 3) > 0.001 && Math.abs(number - 3.14) > 0.02 && number > 5) return undefined;
  const three = number === 3;
  if (onFrench)
    return operation === 'over'
      ? three
        ? 'mm-is-french-over-3'
        : 'french-over-other'
      : three
        ? 'mm-is-french-times-3'
        : 'french-over-other';
  return operation === 'times'
    ? three
      ? 'french-is-mm-times-3'
      : 'french-times-other'
    : three
      ? 'french-is-mm-over-3'
      : 'french-times-other';
}

/** "to go from French to millimetres": what one starts from is worked on. */
const FROM_TO =
  /\bfrom (?:the )?(french|fr|charri\S+|mm|millimet\w+)(?: (?:size|number|sizes|numbers))? (?:in)?to (?:the )?(?:french|fr|charri|mm|millimet)/;

/** "to get millimetres, divide by three": whether French is worked on, by what comes out. */
function fromResult(text: string): boolean | undefined {
  if (
    /\b(?:into|to get|to find|gives?|for|gets? you|french (?:back )?(?:in)?to) (?:the )?(?:mm|millimet)/.test(
      text,
    )
  )
    return true;
  if (/\b(?:get|find|work out|calculate|obtain|want|need) (?:the |its |your )?(?:french|charri)/.test(text))
    return false;
  if (
    /\b(?:get|find|work out|calculate|obtain|want|need|(?:you|we) have|leaves (?:you )?with) (?:the |its |your )?(?:mm|millimet|(?:outer |outside )?(?:diameter|width) in (?:mm|millimet)|(?:outer |outside )?diameter)/.test(
      text,
    )
  )
    return true;
  return /\b(?:into|to get|to find|gives?|for|gets? you|(?:mm|millimet\w+) (?:back )?(?:in)?to) (?:the )?(?:french|fr|charri)|\bfrench from (?:the )?millimet/.test(
    text,
  )
    ? false
    : undefined;
}

/** "Take the diameter in millimetres and divide by three": what is taken first is worked on. */
const TAKEN =
  /\b(?:take|start (?:with|from|off with)|read(?: off)?|measure|have|use|grab) (?:(?:the|its|your|a|any|that|whatever) )?(?:\S+ ){0,3}?(french|fr|charri\S+|mm|millimet\w+|diameter|width|outside)(?: |$)/;

/** "…, and that's your French", "… and there are your millimetres": whether French is worked on, by what it comes to. */
const COMES_TO =
  /\b(?:that's|that is|it's|it is|there's|there is|there are|you've got|you have got|you have|you've|which is|is|and) (?:(?:your|the|its|how many|how much|now|in) )+(french|fr|charri\S+|mm|millimet\w+)(?: |$)/;

function fromTaken(items: readonly Item[], at: number): boolean | undefined {
  const french = (word: string) => /^(?:french|fr|charri)/.test(word);
  const taken = TAKEN.exec(words(items.slice(0, at)))?.[1];
  const result = COMES_TO.exec(words(items.slice(at + 1)))?.[1];
  if (taken && result && french(taken) === french(result)) return undefined;
  return taken ? french(taken) : result ? !french(result) : undefined;
}

/** "divide by three to get millimetres": what it gives, not what is worked on. */
const given = (items: readonly Item[], at: number, object: number): boolean =>
  /(?:^| )(?:to (?:get|find|have)|into|gives?|for|and (?:you|we) (?:get|have))(?: \S+)?$/.test(
    words(items.slice(at + 1, at + 1 + object)),
  );

/** "multiply by three and the French has become millimetres": what turns into the other is worked on. */
const TURNS =
  /\b(french|fr|charri\S+|mm|millimet\w+)(?: (?:size|number|figure))?(?: (?:also|really|then|now))? (?:(?:has|have|will have) (?:also |really |then |now )?become|becomes?|turns? into|is now|are now|turned into) (?:the |a )?(?:french|fr|charri|mm|millimet)/;

/** Behind "times three": what follows is the result, however it is stressed. */
const COMES_OUT =
  /^(?:also |always |really |simply |then |therefore )?(?:is|equals|gives?|makes?|gets?|=|turns out|comes (?:out )?(?:to|at|as)|(?:will|must|has to|have to|ought to|should) (?:also |always |then |therefore )?(?:be|equal|give|make|come))(?: |$)/;

function actsOnFrench(items: readonly Item[], french: number, size: number, at: number): boolean | undefined {
  const word = items[at]!.word;
  const turned = TURNS.exec(words(items));
  if (turned) return /^(?:french|fr|ch)/.test(turned[1]!);
  const trip = FROM_TO.exec(words(items));
  if (trip) return /^(?:french|fr|ch)/.test(trip[1]!);
  if (word === 'times' && COMES_OUT.test(joined(items, at + 2, at + 6))) {
    const left = items.slice(0, at).findLast((item) => item.system === 'french' || MM.test(item.word));
    if (left) return left.system === 'french';
  }
  const verb =
    (/^(?:divid|multipl|tripl|treble|doubl|halv)/.test(word) && !/ed$/.test(word)) || timesIt(items, at);
  if (verb) {
    const object = items
      .slice(at + 1, at + 6)
      .findIndex(
        (item) => item.system === 'french' || MM.test(item.word) || /^(?:diameter|outside)$/.test(item.word),
      );
    const found = object < 0 ? undefined : items[at + 1 + object];
    const into = /\b(?:into|to) (?:mm|millimet\w+|french|fr)\b/.test(words(items.slice(0, at)));
    if (/^(?:them|it|that|this)$/.test(items[at + 1]?.word ?? '') && !into) {
      // "if you have the millimetres, double them": the unit named before is what is worked on.
      const named = items.slice(0, at).findLast((item) => item.system === 'french' || MM.test(item.word));
      if (named) return named.system === 'french';
    }
    if (found && given(items, at, object)) return found.system !== 'french';
    if (found && /^by$/.test(items[at + 1]!.word)) return fromTaken(items, at) ?? found.system === 'french';
    if (found && !/^it$/.test(items[at + 1]!.word)) return found.system === 'french';
    // "Take the French size and divide it by …"
    if (items[at + 1]?.word === 'it' && french < at && (size < 0 || size > at)) return true;
    if (found) return found.system === 'french';
    return fromResult(words(items)) ?? fromTaken(items, at);
  }
  if (/^(?:times|third|thrice|twice|half)$/.test(word)) {
    // "one French is a third of a millimetre" defines the unit: the same as dividing French by three.
    if (word === 'third' && items[at + 1]?.word === 'of' && /^(?:a|one|1)$/.test(items[at + 2]?.word ?? ''))
      return true;
    const object = operandAfter(items, at);
    if (object || word !== 'times') return object ? object.system === 'french' : undefined;
  }
  // "D (mm) = Fr/3 or Fr = D (mm) * 3": of several equations, what stands before the sign is worked on.
  if (items.filter((item) => item.word === '=').length > 1) {
    const left = items.slice(0, at).findLast((item) => item.system === 'french' || MM.test(item.word));
    return left && left.system === 'french';
  }
  const equals = items.findIndex((item) => /^(?:=|is|gives?|equals|makes?|yields?)$/.test(item.word));
  if (equals < 0) return french < at && (size < 0 || size > at) ? true : undefined;
  const side = (index: number) => index >= 0 && index < equals === at < equals;
  if (side(french) === side(size)) return undefined;
  return side(french);
}

/** "take the French and times it by three". */
const timesIt = (items: readonly Item[], at: number): boolean =>
  items[at]!.word === 'times' &&
  /^(?:it|them)$/.test(items[at + 1]?.word ?? '') &&
  items[at + 2]?.word === 'by';

/** "three times the diameter": what the operation acts on, not what it gives. */
function operandAfter(items: readonly Item[], at: number): Item | undefined {
  const near = items.slice(at + 1, at + 7);
  const result = near.findIndex((item) => /^(?:gives?|equals|makes?|yields?|=)$/.test(item.word));
  return near
    .slice(0, result < 0 ? near.length : result)
    .find(
      (item) => item.system === 'french' || MM.test(item.word) || /^(?:diameter|outside)$/.test(item.word),
    );
}

const STEP =
  /\b(?:each|every|one|a|per) (?:extra |single |further |whole |full )?(?:step|french|fr|charri[eè]re|unit|number|size)\b[^0-9,;:=]{0,60}?\b(half|quarter|tenth|fifth|third|one|1|two|2|full|whole) (?:of )?(?:a |an )?(?:full |whole )?(?:mm|millimet(?:re|er)s?)\b/;

/** "Each step up the French scale adds half a millimetre." */
function stepOf(items: readonly Item[]): string | undefined {
  const match = STEP.exec(words(items));
  if (!match) return undefined;
  return match[1] === 'third' ? 'mm-is-french-over-3' : 'french-over-other';
}

/** The way around a tube. */
const AROUND =
  'circumference|girth|perimeter|(?:how far (?:it is |it goes |it measures )?|distance |length |millimetres |mm )(?:all the way |right )?a?round|way (?:all )?a?round (?:the|its?|an?)';

/** What may stand between the verb and the measure: "is really just the measured size of the catheter's". */
const GAP =
  "(?:(?:an?|the|its?|their|your|this|that|any|each|every|one|just|simply|really|literally|actually|basically|nothing|but|only|merely|always|indeed|of|in|for|to|as|from|measured|measure|measurement|measuring|number|size|width|length|distance|value|name|word|unit|millimet(?:re|er)s|mm|tubes?|catheters?|needles?|drains?|cannulae?|cannulas?|device|instrument|shaft|hollow|[a-z]+'s|s'|what|you|get|outer|outside|about|also|said|be|meant|supposed) ){0,6}?";

/** "French number is/tells you/stands for …": the scale, its verb, and what may stand before the measure. */
const NAMES = `^\\S+(?: \\S+){0,4}? (?:is|are|means?|measures?|equals?|gives?|=|describes?|refers? to|tells? you|counts?|represents?|denotes?|indicates?|corresponds? to|reflects?|expresses) ${GAP}`;
const names = (measure: string) => new RegExp(`${NAMES}(?:${measure})\\b`);
const IS_AROUND = names(AROUND);
const IS_INNER = names('(?:inner|inside|internal) (?:diameter|bore)|lumen|bore');
const IS_MILLIMETRES = names(
  '(?:outer |outside )?(?:diameters?|widths?|thickness|size) in (?:mm|millimet(?:re|er)s)|(?:just|simply|nothing but|only) (?:the )?(?:number of )?(?:mm|millimet(?:re|er)s)',
);

const LEFT_OPEN = /\b(?:sheaths?|introducers?|roughly|about|approximately|nearly|near)\b/;

/** "French is the circumference in millimetres", "French size is the inner diameter". */
function named(scene: Scene, french: number): Reading[] {
  const { items } = scene;
  if (items.some((item) => item.kind === 'size')) return [];
  // What stands after a comma is another statement: "gives the outside; the bore is smaller".
  const text = words(items.slice(french)).split(/ [;,.] /)[0]!;
  const hit = affirms(IS_AROUND, text)
    ? 'french-is-circumference'
    : affirms(IS_INNER, text)
      ? 'french-is-inner'
      : affirms(IS_MILLIMETRES, text) && !/\b(?:third|three|3|times|tripl|multipl)|[×*_…]/.test(text)
        ? 'french-is-diameter-mm'
        : undefined;
  if (!hit || LEFT_OPEN.test(words(items)) || (hit === 'french-is-inner' && ofSheaths(scene))) return [];
  return [reading(scene, 'french', hit, french, french, items.length - 1)];
}

/** What spans the sentence is stated by nobody when there is a "not" anywhere in it. */
const isDenied = (items: readonly Item[]): boolean => items.some((item) => NEGATIONS.has(item.word));

/** Words that match, with no "not" among them: "French is not the circumference" says nothing of it. */
function affirms(pattern: RegExp, text: string): boolean {
  const match = firstMatch(pattern, text)?.[0];
  return (
    match !== undefined &&
    !match.split(' ').some((word) => NEGATIONS.has(word) || (COMPARED.test(word) && !SIDE.test(word)))
  );
}
/** "a lower gauge means a larger internal diameter": which way they go, not what is measured. */
const COMPARED =
  /^(?:[a-z]{3,}er|more|less|small|large|big|wide|narrow|thin|thick|high|low|different|increas\w+|decreas\w+|reduc\w+|greatest|largest|smallest|best|both)$/;
const SIDE =
  /^(?:inner|outer|number|diameter|perimeter|centimeter|millimeter|other|never|catheter|introducer|caliper|calliper|ruler|paper|order|quarter|under|over|after|either|whether|however|character)$/;

/** "gauge is the diameter in millimetres", "gauge tells you the number of tenths of a millimetre". */
const GAUGE_MEASURE =
  /^gauge(?: number| size)? (?:is|means|equals|gives|tells you|stands for|counts|measures) (?:(?:just|simply|literally|really|actually|basically|nothing but) )*(?:the )?(?:outer |outside |inner |inside )?(?:diameter|width|thickness|number of|bore)(?: of the (?:needle|cannula|bore))?(?: in)? (?:(?:tenths|hundredths|thousandths) of (?:a|an) )?(?:mm|millimet(?:re|er)s?|inch(?:es)?|cm)\b/;

/** "What gauge gives you, exactly, is the diameter of the bore", "gauge tells you the width of the hole". */
const CLEFT =
  /^gauge(?: number)? (?:(?:does|really|actually|only) )?(?:gives?|tells?|measures?|describes?|is|means|states?|refers to)(?: you)?(?: (?:, )?(?:exactly|precisely)(?: ,)?)? (?:is )?(?:the )?(?:exact )?(?:(?:diameter|width) of (?:the |its )?(?:bore|lumen|hole|inside|channel)|(?:inner|inside|internal) (?:diameter|width))\b/;

const GAUGE_IS_INNER = new RegExp(
  `^\\S+(?: number| size)?(?: of (?:a|an|the|any|every) (?:\\w+ ){0,2}(?:needle|cannula|cannulae|needles))? (?:is|measures|describes|refers to|means|tells you|counts|represents|denotes|indicates|corresponds to|reflects|expresses) ${GAP}(?:inner|inside|internal) (?:diameter|bore|measurement|width|opening)\\b`,
);

/** "B & S gauge is the same as AWG": two scales of wire. */
const OF_WIRE = /\b(?:sharpe|swg|(?:standards? (?:of|for)|wire|conductor) (?:diameters?|standards?))\b/;
function readGauge(scene: Scene, gauge: number): Reading[] {
  const { items } = scene;
  const awg =
    /\b(?:awg|american wire gauge|electricians?(?:'s)?|electrical wire)\b/.test(words(items)) &&
    /\b(?:same|equal|identical)\b/.test(words(items)) &&
    !OF_WIRE.test(words(items));
  // "a thing nobody says out loud: gauge is …": what stands before the colon denies nothing.
  const denied = isDenied(items.slice(items.slice(0, gauge).findLastIndex((item) => item.word === ':') + 1));
  if (awg && !denied && !items.some((item) => item.kind === 'size'))
    return [reading(scene, 'needle-gauge', 'gauge-is-awg', gauge, 0, items.length - 1)];
  const linear = finds(
    /\b(?:halv(?:e|es|ing)|doubl(?:e|es|ing)) the gauge(?: number)? (?:\w+ ){0,2}?(?:halves|doubles) the\b|\bequal steps\b/,
    words(items),
  );
  if (linear && !denied)
    return [reading(scene, 'needle-gauge', 'gauge-is-linear', gauge, 0, items.length - 1)];
  const whole = words(items);
  if (
    !denied &&
    finds(
      /\b(?:divide (?:one|an|1)(?: inch)? by the gauge|one inch divided by the gauge|(?:one|1) (?:divided by|over) (?:its |the |your )?gauge|gauge is (?:(?:just|simply|literally|really|actually|basically|nothing but) )*(?:one|1) (?:divided by|over) (?:the|its|your)|(?:flip|turn|invert) (?:the|a|your) gauge (?:number )?(?:over|upside down)? ?(?:and|to) (?:you )?(?:get|have|find)|1 \/ gauge|one over the gauge|(?:the )?gauge (?:number )?is (?:the )?(?:number of )?(?:needles|wires) (?:that )?(?:fit|side by side)|reciprocal)\b/,
      whole,
    )
  )
    return [reading(scene, 'needle-gauge', 'gauge-is-reciprocal', gauge, 0, items.length - 1)];
  if (finds(GAUGE_MEASURE, words(items.slice(gauge))))
    return [reading(scene, 'needle-gauge', 'gauge-is-measure', gauge, gauge, items.length - 1)];
  if (!denied && finds(CLEFT, words(items.slice(gauge))))
    return [reading(scene, 'needle-gauge', 'gauge-is-inner', gauge, gauge, gauge)];
  if (items.some((item) => item.kind === 'size')) return [];
  return affirms(GAUGE_IS_INNER, words(items.slice(gauge)))
    ? [reading(scene, 'needle-gauge', 'gauge-is-inner', gauge, gauge, items.length - 1)]
    : [];
}

function reading(
  scene: Scene,
  system: 'french' | 'needle-gauge' | 'tube-id',
  id: string,
  at: number,
  from: number,
  to: number,
): Reading {
  return { claim: ruleClaim(scene, 'formula', system, id, at), at, from, to };
}
