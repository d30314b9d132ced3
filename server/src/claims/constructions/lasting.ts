/**
 * How long threads last: "chromic gut holds longer than polydioxanone", "plain gut outlasts chromic", "polydioxanone is
 * gone within two weeks".
 */
import { cue, holds } from '../text/cues.ts';
import { joined, textOf } from '../text/joined.ts';
import { materialsIn, type NamedMaterial } from '../text/materials.ts';
import type { Scene } from '../text/scene.ts';
import { spanAt } from '../text/spans.ts';
import { NEGATIONS } from '../words/changes.ts';
import { durations } from './durations.ts';
import { materialClaim } from './material-claim.ts';
import type { Construction, Reading } from './model.ts';

export const lasting: Construction = {
  id: 'lasting',
  needs: () => [{ holds: ['material'] }],
  read(scene) {
    const { items } = scene;
    const asked = answered(scene);
    if (asked) return [asked];
    if (holds(items, TURNED)) return [];
    const named = materialsIn(items);
    return named.length === 2
      ? compared(scene, named[0]!, named[1]!)
      : named.length === 1
        ? lastingOf(scene, named[0]!)
        : [];
  },
};

const TURNED = cue(NEGATIONS, /^(?:if|unless|wet|dry|infected|neither)$/);

/** "Which holds a wound longer, polydioxanone or polyglactin 910? The polyglactin.": the question tells what, the answer which. */
function answered(scene: Scene): Reading | undefined {
  const question = scene.before.at(-1) ?? scene.context.at(-1);
  if (question?.close !== '?') return undefined;
  const [chosen, ...more] = materialsIn(scene.items);
  if (!chosen || scene.option) return undefined;
  if (more.some(({ id }) => id !== chosen.id) || !ANSWERS.test(joined(scene.items, 0, chosen.at)))
    return undefined;
  const asked = materialsIn(question.items);
  const [other, ...others] = asked.filter(({ id }) => id !== chosen.id);
  const text = joined(question.items);
  if (!other || others.length > 0 || asked.length !== 2 || !/\b(?:which|what)\b/.test(text)) return undefined;
  if (question.items.some(({ word }) => NEGATIONS.has(word) || ASKS_ELSE.test(word))) return undefined;
  if (!ANSWERED.test(scene.items[chosen.to + 1]?.word ?? '.')) return undefined;
  const said = measureOf(text.replace(/\bfirst\b/, 'sooner').replace(/\blast\b(?= |$)(?! long)/, 'later'));
  if (!said) return undefined;
  const [long, short] = said.sign === 1 ? [chosen, other] : [other, chosen];
  const made = reading(scene, chosen, chosen.at, chosen.to, `outlasts:${said.what}:${short.id}:${long.id}`);
  return { ...made, answered: true };
}
const ANSWERS = /^(?:(?:the|it's|it|is|that's|that|would|be|easily|clearly|of|course|,|answer|:|always) ?)*$/;
const ANSWERED = /^(?:[.,;:!(—–-]|because|since|does|of|by|every|thread|suture)$/;
const ASKS_ELSE = /^(?:if|wet|dry|infected|knots?|shelf|cheaper|stronger|unless|than|why|should)$/;

/** Of one thread: how long it stays, how long it holds, how much of its strength is left. */
function lastingOf(scene: Scene, m: NamedMaterial): Reading[] {
  const tight = [...gone(scene, m), ...weakened(scene, m)];
  return tight.length > 0
    ? tight
    : durations(scene, m).map((told) => reading(scene, m, told.at, told.at, told.property));
}

const LONGER = /\b(?:longer|outlasts?|outlive[sd]?|for more time)\b/;
const SHORTER = /\b(?:less long|shorter|not as long|for less time|less time)\b/;
const LATE = /\b(?:later|slower|more slowly|less quickly|less fast)\b/;
const EARLY = /\b(?:sooner|faster|earlier|quicker|more quickly|more rapidly)\b/;
const KEEPS =
  /\bstronger for longer\b|\b(?:keeps?|holds?|retains?|supports?) (?:on )?(?:its |their |the |up |good |most of its )?(?:strength|tension|tensile|wound|wounds|edges|tissue|for|longer|up)?/;
const LOSES =
  /\b(?:loses?|losing|gives? up|surrenders?) (?:its |their |tensile )?(?:tensile )?(?:strength|hold|tension|grip)\b/;
const GOES = /\b(?:absorb(?:s|ed)?|dissolves?|disappears?|resorbed|gone|goes)\b/;
const LASTS = /\b(?:lasts?|outlasts?|outlive[sd]?|stays)\b/;

/** Which of two lasts longer, and in what: its strength, the thread itself, or either. */
function compared(scene: Scene, a: NamedMaterial, b: NamedMaterial): Reading[] {
  const between = scene.items.slice(a.to + 1, b.at);
  if (between.length > 9 || between.some((item) => item.kind !== 'word')) return [];
  const text = textOf(between);
  const outlasts = /^(?:always |easily |well )?(?:outlasts?|outlive[sd]?)$/.test(text);
  if (!outlasts && !/ than(?: (?:plain|the))?$/.test(text)) return [];
  const read = outlasts ? { sign: 1, what: 'both' } : measureOf(text);
  if (!read) return [];
  const at = scene.items.findIndex((item, i) => i > a.to && COMPARING.test(item.word));
  if (at < 0) return [];
  return [
    reading(
      scene,
      a,
      at,
      b.to,
      `outlasts:${read.what}:${read.sign === 1 ? b.id : a.id}:${read.sign === 1 ? a.id : b.id}`,
    ),
  ];
}
const COMPARING =
  /^(?:longer|shorter|later|slower|sooner|faster|earlier|quicker|outlasts?|outlive[sd]?|more|less)$/;

function measureOf(text: string): { sign: 1 | -1; what: string } | undefined {
  const sign = (up: boolean, down: boolean): 1 | -1 | undefined => (up === down ? undefined : up ? 1 : -1);
  const long = sign(LONGER.test(text), SHORTER.test(text));
  const late = sign(LATE.test(text), EARLY.test(text));
  const found = LOSES.test(text)
    ? { sign: late, what: 'strength' }
    : GOES.test(text)
      ? { sign: late, what: 'absorption' }
      : LASTS.test(text)
        ? { sign: long, what: 'both' }
        : KEEPS.test(text)
          ? { sign: long, what: 'strength' }
          : undefined;
  return found?.sign ? { sign: found.sign, what: found.what } : undefined;
}

const ABSORBS =
  /^(?:absorbed|absorbs?|dissolves?|dissolved|gone|disappears?|resorbed|resorbs|hydroly[sz]ed)$/;
const AHEAD = 7;

/** "is gone within two weeks", "dissolves in about ten days": how long the thread itself stays. */
function gone(scene: Scene, m: NamedMaterial): Reading[] {
  const { items } = scene;
  const verb = items.findIndex((item, i) => i > m.to && ABSORBS.test(item.word));
  const between = items.slice(m.to + 1, Math.max(verb, 0));
  if (verb < 0 || between.length > 5 || !between.every((item) => QUIET.test(item.word))) return [];
  // "has gone in a week as far as strength is concerned": the thread is still there.
  if (items.slice(verb).some((item) => /^(?:strength|support|hold|tension)$/.test(item.word))) return [];
  const near = items.slice(verb + 1, verb + 1 + AHEAD);
  const lead = near.findIndex((item) => /^(?:in|within|after|by|over)$/.test(item.word));
  const time =
    lead === 0 || (lead === 1 && /^(?:completely|fully|entirely|away)$/.test(near[0]!.word))
      ? spanAt(near.slice(lead + 1))
      : undefined;
  if (!time) return [];
  return [reading(scene, m, verb, verb, `gone:${time.low}:${time.high}`)];
}
const QUIET =
  /^(?:is|are|was|has|have|been|will|be|usually|normally|generally|typically|sutures?|stitch|stitches|thread|completely|fully|slowly|quickly|all|it|gets|and|itself)$/;

/** "loses its strength within three weeks": all of it, not half. */
function weakened(scene: Scene, m: NamedMaterial): Reading[] {
  const { items } = scene;
  const verb = items.findIndex((item, i) => i > m.to && /^(?:loses?|lost)$/.test(item.word));
  if (verb < 0 || !items.slice(m.to + 1, verb).every((item) => QUIET.test(item.word))) return [];
  const strength = items.findIndex((item, i) => i > verb && i <= verb + 4 && item.word === 'strength');
  const whole = items
    .slice(verb + 1, strength)
    .every((item) => /^(?:its|their|all|the|of|tensile)$/.test(item.word));
  const lead = items[strength + 1]?.word ?? '';
  const time =
    strength > 0 && whole && /^(?:in|within|after|by)$/.test(lead)
      ? spanAt(items.slice(strength + 2, strength + 8))
      : undefined;
  return time ? [reading(scene, m, strength, strength, `weak:${time.low}:${time.high}`)] : [];
}

function reading(scene: Scene, m: NamedMaterial, at: number, to: number, property: string): Reading {
  const claim = materialClaim(scene, 'lasting', m.id, property, at);
  return { claim, at, from: m.at, to: Math.max(at, to) };
}
