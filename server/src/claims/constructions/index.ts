/** The constructions of the grammar, in the order in which they are tried. The first reading of a claim wins. */
import { abbreviations } from './abbreviations.ts';
import { absence } from './absence.ts';
import { alike } from './alike.ts';
import { between } from './between.ts';
import { boxed } from './boxed.ts';
import { byAge } from './by-age.ts';
import { byLabel } from './by-label.ts';
import { byTube } from './by-tube.ts';
import { category } from './category.ts';
import { colour } from './colour.ts';
import { COMPARISONS } from './comparisons.ts';
import { counted } from './counted.ts';
import { coupled } from './coupled.ts';
import { defined } from './defined.ts';
import { direction } from './direction.ts';
import { equative } from './equative.ts';
import { equivalence } from './equivalence.ts';
import { evenOnly } from './even-only.ts';
import { existence } from './existence.ts';
import { fit } from './fit.ts';
import { flowLaws } from './flow-laws.ts';
import { flowSums } from './flow-sums.ts';
import { formula } from './formula.ts';
import { chooser } from './gate.ts';
import { gist } from './gist.ts';
import { grab } from './grab.ts';
import { gutRule } from './gut-rule.ts';
import { hued } from './hued.ts';
import { hues } from './hues.ts';
import { inchLengths } from './inch-lengths.ts';
import { label } from './label.ts';
import { laidOut } from './laid-out.ts';
import { lasting } from './lasting.ts';
import { laws } from './laws.ts';
import { lengths } from './lengths.ts';
import { lengthwise } from './lengthwise.ts';
import { likened } from './likened.ts';
import { limit } from './limit.ts';
import { members } from './members.ts';
import type { Construction } from './model.ts';
import { namedBy } from './named-by.ts';
import { oddSizes } from './odd-sizes.ts';
import { offSeries } from './off-series.ts';
import { onlyOne } from './only-one.ts';
import { pointUses } from './point-uses.ts';
import { points } from './points.ts';
import { property } from './property.ts';
import { range } from './range.ts';
import { reckon } from './reckon.ts';
import { referents } from './referents.ts';
import { restated } from './restated.ts';
import { scaleOf } from './scale-of.ts';
import { severalAlike } from './several-alike.ts';
import { spelled } from './spelled.ts';
import { spinalTips } from './spinal-tips.ts';
import { strands } from './strands.ts';
import { suctioning } from './suctioning.ts';
import { sums } from './sums.ts';
import { tubeTalk } from './tube-talk.ts';
import { tubes } from './tubes.ts';
import { unit } from './unit.ts';
import { usual } from './usual.ts';
import { whole } from './whole.ts';
import { width } from './width.ts';
import { wireScale } from './wire-scale.ts';
import { worded } from './worded.ts';
import { writings } from './writings.ts';
import { wrongUnit } from './wrong-unit.ts';
import { zeros } from './zeros.ts';

export const CONSTRUCTIONS: readonly Construction[] = [
  ...COMPARISONS,
  label,
  byLabel,
  equative,
  spelled,
  direction,
  coupled,
  whole,
  sums,
  worded,
  equivalence,
  inchLengths,
  width,
  boxed,
  restated,
  alike,
  severalAlike,
  likened,
  colour,
  hues,
  hued,
  category,
  range,
  laidOut,
  limit,
  defined,
  between,
  grab,
  tubes,
  byAge,
  byTube,
  tubeTalk,
  suctioning,
  reckon,
  formula,
  scaleOf,
  namedBy,
  lengths,
  flowLaws,
  lengthwise,
  flowSums,
  unit,
  laws,
  zeros,
  counted,
  property,
  onlyOne,
  gutRule,
  wireScale,
  referents,
  lasting,
  members,
  fit,
  strands,
  points,
  pointUses,
  spinalTips,
  usual,
  wrongUnit,
  absence,
  evenOnly,
  existence,
  oddSizes,
  offSeries,
  gist,
  writings,
  abbreviations,
];

/** The constructions that may read a sentence: no other would say anything. */
export const constructionsFor = chooser(CONSTRUCTIONS);
