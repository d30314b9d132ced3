/** A number with a unit of another scale: "a 0.014 mm guidewire" (inches), "an 8 French endotracheal tube" (mm inside). */

import { finds } from '../../notes/patterns.ts';
import { colourFits } from '../../sizes/index.ts';
import type { FormulaClaim } from '../model.ts';
import { cue, holds } from '../text/cues.ts';
import type { Item } from '../text/items.ts';
import { joined } from '../text/joined.ts';
import { type Group, groups, type Scene } from '../text/scene.ts';
import { codeAround } from './hub-code.ts';
import type { Construction } from './model.ts';
import { ruleClaim } from './rule-claim.ts';

/** Guidewire diameters as printed, in thousandths of an inch. */
const WIRES = new Set([10, 14, 18, 21, 25, 28, 32, 35, 38]);
const WIRE = /^(?:wires?|guidewires?|guide-wires?)$/;
const OTHER_WIRE = /^(?:steel|suture|kirschner|k-wires?|cerclage|orthodontic|fracture|bone|pins?)$/;
/** What may stand between a wire and its size. */
const SAID =
  /^(?:is|are|was|of|a|an|the|=|:|,|\(|about|approximately|generally|usually|typically|mostly|around|roughly|measures?|diameter|with|has|have|in|sized?|at|from)$/;
const TRACHEAL = /^(?:endotracheal|tracheal|et|ett|ets)$/;
const OTHER_TUBE =
  /^(?:double-lumen|double|lumen|endobronchial|suction|exchange|bougie|introducer|stylet|tracheostomy)$/;

const NEEDLE = /^needles?$/;
const FOLEY = /^foleys?$/;
const INTO_BODY = /^(?:urinary|urethral|bladder|nasogastric|foley)$/;
/** Things whose unit is looked at; a hub is known by its colour. */
const THING = cue(WIRE, TRACHEAL, NEEDLE, FOLEY, INTO_BODY);

export const wrongUnit: Construction = {
  id: 'wrong-unit',
  needs: () => [{ sizes: 1 }],
  read(scene) {
    const named = holds(scene.items, THING) || scene.items.some(({ colour }) => colour !== undefined);
    return groups(scene.items).flatMap((group) => {
      const formula = (named ? ofThing(scene, group) : undefined) ?? twoUnits(group);
      return formula ? [reading(scene, group, formula)] : [];
    });
  },
};

/** The unit that no size of the thing beside it has. */
const ofThing = (scene: Scene, group: Group): FormulaClaim['formula'] | undefined =>
  inchesAsMm(scene.items, group) ??
  tubeInFrench(scene.items, group) ??
  needleInFrench(scene.items, group) ??
  hubInFrench(scene, group) ??
  catheterInGauge(scene.items, group);

/** No guidewire is a few hundredths of a millimetre thick. */
function inchesAsMm(items: readonly Item[], group: Group): FormulaClaim['formula'] | undefined {
  const thin = group.sizes.every(
    ({ system, value }) => system === 'millimetre' && WIRES.has(Math.round(value * 1000)),
  );
  if (!thin || items.some((item) => OTHER_WIRE.test(item.word))) return undefined;
  const after = items.slice(group.to + 1, group.to + 4).some((item) => WIRE.test(item.word));
  const before = items.slice(Math.max(0, group.from - 8), group.from);
  const wire = before.findLastIndex((item) => WIRE.test(item.word));
  const said = wire >= 0 && before.slice(wire + 1).every((item) => SAID.test(item.word));
  return after || said ? 'wire-inches-as-mm' : undefined;
}

/** "a 5.5-French endotracheal tube": right before the tube's name, in the range of inner diameters. */
function tubeInFrench(items: readonly Item[], group: Group): FormulaClaim['formula'] | undefined {
  const { system, value } = group.sizes[0]!;
  if (system !== 'french' || group.sizes.length > 1 || value < 2 || value > 10) return undefined;
  const named = TRACHEAL.test(items[group.to + 1]?.word ?? '') && items[group.to + 2]?.deviceNoun === true;
  return named && !items.some((item) => OTHER_TUBE.test(item.word)) ? 'tube-in-french' : undefined;
}

/** "a 19-French needle": gauge numbers with the wrong unit; a few drainage needles are 4 to 7 Fr. */
function needleInFrench(items: readonly Item[], group: Group): FormulaClaim['formula'] | undefined {
  const { system, value } = group.sizes[0]!;
  if (system !== 'french' || group.sizes.length > 1 || value < 14 || value > 30) return undefined;
  return NEEDLE.test(items[group.to + 1]?.word ?? '') ? 'needle-in-french' : undefined;
}

/** "The green cannula goes in the notes as 18 French": the number that goes with its colour is its gauge. */
function hubInFrench(scene: Scene, group: Group): FormulaClaim['formula'] | undefined {
  const { items } = scene;
  const { system, value } = group.sizes[0]!;
  if (system !== 'french' || group.sizes.length > 1) return undefined;
  const at = items.findIndex((item) => item.colour);
  const noun = items[at + 1]?.word ?? '';
  const cannula =
    /^(?:cannulas?|cannulae|iv)$/.test(noun) || (noun === 'one' && codeAround(scene) === 'cannula');
  if (
    at < 0 ||
    at > group.from ||
    !cannula ||
    items.some((item) => /^(?:not|never|no|or|if|instead)$/.test(item.word))
  )
    return undefined;
  const between = joined(items, at + 2, group.from);
  return colourFits('ISO 10555-5', value, items[at]!.colour!) === true && CALLED.test(between)
    ? 'cannula-in-french'
    : undefined;
}
const CALLED =
  /^(?:(?:is|are|goes|go|went|gets|written|charted|recorded|called|down|in|into|on|the|your|notes?|chart|form|label|always|usually|then|documented|put|entered) ){0,8}(?:as|is|are|called|says|reads|means|write|chart)(?: an?| the)?$|^(?:is|=)(?: an?)?$/;

/** "a 16 G Foley": only the French scale is used on what goes into a bladder or a stomach. */
function catheterInGauge(items: readonly Item[], group: Group): FormulaClaim['formula'] | undefined {
  const { system } = group.sizes[0]!;
  if (
    system !== 'needle-gauge' ||
    items.some(
      (item) => /^(?:not|never|no|or|suprapubic|needle|needles)$/.test(item.word) && item.word !== 'or',
    )
  )
    return undefined;
  const [next, more] = [items[group.to + 1]?.word ?? '', items[group.to + 2]?.word ?? ''];
  const foley = FOLEY.test(next) || (INTO_BODY.test(next) && /^(?:catheters?|tubes?)$/.test(more));
  return foley ? 'catheter-in-gauge' : undefined;
}

/** "a 16 G Fr catheter". */
const twoUnits = (group: Group): FormulaClaim['formula'] | undefined =>
  group.mentions.some(({ text }) => finds(/[0-9]\s?-?G\s?[/-]?\s?Fr\b|[0-9]\s?-?Fr\s?[/-]?\s?G\b/, text))
    ? 'two-units'
    : undefined;

function reading(scene: Scene, group: Group, formula: string) {
  const claim = ruleClaim(scene, 'wrong-unit', group.sizes[0]!.system, formula, group.from, group.to);
  return { claim, at: group.from, from: group.from, to: group.to };
}
