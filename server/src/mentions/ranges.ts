/** Two sizes of one system joined by a dash or "to" are one range: "2-0 to 4-0", "14G to 26G". */

import { sourceSpan } from '../notes/index.ts';
import type { Mention } from './model.ts';
import type { Scene } from './scene.ts';

const JOIN = /^\s?[-‐‑‒–—−]\s?$|^\s(?:to|through|à|bis)\s$/;
/** "go from 16 Fr to 14 Fr" is a change, not a range. */
const CHANGE = /\bfrom\s(?:an?\s|the\s)?$/i;
const RANGING =
  /\b(?:rang\w+|runs?|sizes?|available|com(?:e|es|ing)|vary|varies|anything|any|everything|made|sold|exists?|cover\w*|span\w*|stock\w*)\b[^.]{0,40}\bfrom\s(?:an?\s)?$/i;

/** "Nylon from 5-0 to 7-0 is …": things of these sizes, of which something is told. */
const THINGS =
  /(?:^|[.:;,!?]\s|\n\W*)(?:(?:our|all|the|most|your)\s)?(?:[a-z-]+\s)?(?:sutures?|threads?|needles?|cannula(?:s|e)|catheters?|drains?|tubes?|nylon|silk|polypropylene|polyester|gut|catgut)\sfrom\s(?:an?\s)?$/i;
const TOLD = /^\s(?:is|are|measures?)\s/;

export function joinRanges(scene: Scene, mentions: readonly Mention[]): Mention[] {
  const out: Mention[] = [];
  for (const mention of mentions) {
    const last = out.at(-1);
    if (last && joins(scene.passage.text, last, mention)) out[out.length - 1] = merged(scene, last, mention);
    else out.push(mention);
  }
  return out;
}

function joins(text: string, a: Mention, b: Mention): boolean {
  if (a.notation !== 'bare' && /^[0-9.,]+$/.test(a.text)) return false;
  if (
    a.kind !== 'size' ||
    b.kind !== 'size' ||
    a.sizes[0]!.system !== b.sizes[0]!.system ||
    a.length !== b.length
  )
    return false;
  if (!JOIN.test(text.slice(a.span.end, b.span.start))) return false;
  const before = text.slice(Math.max(0, a.span.start - 80), a.span.start);
  return (
    !CHANGE.test(before) ||
    RANGING.test(before) ||
    (THINGS.test(before) && TOLD.test(text.slice(b.span.end, b.span.end + 12)))
  );
}

function merged(scene: Scene, a: Mention, b: Mention): Mention {
  const span = { start: a.span.start, end: b.span.end };
  return {
    ...b,
    ...a,
    span,
    source: sourceSpan(scene.passage, span),
    text: scene.passage.text.slice(span.start, span.end),
    kind: 'range',
    sizes: [a.sizes[0]!, b.sizes[0]!],
    decimals: Math.max(a.decimals, b.decimals),
    evidence: [...a.evidence, ...b.evidence],
  };
}
