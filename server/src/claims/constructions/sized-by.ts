/** "The number on a sheath is its inner diameter", "tracheal tubes are ordered by their outside": what the number tells. */
import { firstMatch } from '../../notes/patterns.ts';
import { cue, holds } from '../text/cues.ts';
import { joined } from '../text/joined.ts';
import type { Scene } from '../text/scene.ts';
import type { Reading } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

const SIDE = cue(/outer|outside|external|inner|inside|internal/);

/** A tube under a heading about airways. */
const tubeTalk = (scene: Scene, text: string) =>
  /\btubes?\b/.test(text) &&
  (scene.system === 'tube-id' ||
    /\b(?:tracheal|endotracheal|airways?|intubat\w+)\b/.test(scene.headings.join(' ')));

/** What a sheath or a tracheal tube is sized by. */
export function sizedBy(scene: Scene): Reading[] {
  if (!holds(scene.items, SIDE)) return [];
  const text = joined(scene.items);
  const where = firstMatch(
    /\b(outer|outside|external|inner|inside|internal) (?:diameter|width|size)\b|\b(?:its|the) (outside|inside)(?= of (?:the|a|its) (?:tube|sheath)\b|\b(?<=its \w+))/,
    text,
  );
  if (!where) return [];
  // "their outer diameter is larger": the side is what is spoken of, not what the number tells.
  if (
    /^ (?:is|are|will be) (?:\w+ )?(?:larger|bigger|wider|smaller|narrower|more|less|about|roughly|\d)/.test(
      text.slice(where.index + where[0].length),
    )
  )
    return [];
  // "The number on a catheter is its outside and that on a sheath its inside": each has a side of its own.
  if (/\b(?:number|french|size) (?:on|of) an? (?:\w+ )?(?:catheter|drain|foley)\b/.test(text)) return [];
  const inner = /^inn|^ins|^int/.test(where[1] ?? where[2]!);
  const sheath =
    /\b(?:sheaths?|introducer|introducers)(?:'s)?\b.{0,40}\b(?:french|fr|number|size|sized|label|labelled|labeled|named|described)\b|\b(?:french|number|size|label) (?:of|on) (?:a|the|an|any) (?:\w+ )?(?:sheath|introducer)\b/.test(
      text,
    );
  const tube =
    (/\b(?:tracheal|endotracheal|ett|single-lumen) tubes?\b/.test(text) || tubeTalk(scene, text)) &&
    /\b(?:number|sized|size|numbered|named|measured|goes? by|(?:ordered|sold|listed|called|known|labelled|labeled|graded|stocked) by)\b/.test(
      text,
    ) &&
    !/double/.test(text);
  const link = /\b(?:is|means|gives|from|by|carry|carries|bears?|names|refers to|describes|tells)\b/.test(
    text,
  );
  if (
    !link ||
    sheath === tube ||
    /\b(?:unlike|whereas|while|not|but|than|written|printed|stamped)\b/.test(text)
  )
    return [];
  const id = `${sheath ? 'sheath' : 'tube'}-is-${inner ? 'inner' : 'outer'}`;
  const at = scene.items.findIndex((item) =>
    /^(?:outer|outside|external|inner|inside|internal)$/.test(item.word),
  );
  // "its outside is nearly 8 Fr" gives a value, not the rule by which sheaths are sized.
  const clause = scene.items.slice(at);
  const comma = clause.findIndex((item) => /^[,;]$/.test(item.word));
  if (at < 0 || clause.slice(0, comma < 0 ? clause.length : comma).some((item) => item.kind === 'size'))
    return [];
  const claim = ruleClaim(scene, 'formula', sheath ? 'french' : 'tube-id', id, at);
  return [{ claim, at, from: 0, to: at }];
}
