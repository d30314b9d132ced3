/** How a reply opens that agrees, or turns down what was asked, and what may be agreed to. */
import type { Claim } from '../model.ts';

export const YES =
  /^(?:yes|yep|yeah|aye|(?:easily|certainly|surely|with ease|no problem)(?= [,.!]|$)|correct(?! (?:them|him|her|it|this|that|the|their|his|every|each))|right|true|indeed|exactly|quite right|spot on|it is(?! (?:an? |the )?(?:[0-9]|eight|fourteen|sixteen|twenty)| not\b)|(?:it does|it would|it will|they are|they do|they would)(?! not\b)|they'd have to|that's right|that is right|you're right|of course(?! not))\b/;
export const NO =
  /^(?:no|nope|false|wrong|(?:of course|certainly|definitely|surely) not|not (?:at all|in the least)|by no means|far from it|(?:it|they|that|this) (?:is|are|does|do|would|will) not|it isn't|it doesn't|they aren't|they don't)\b/;

/** Kinds of claims that yes or no, true or false may be said to. */
export const AGREED_TO: ReadonlySet<Claim['kind']> = new Set([
  'comparison',
  'colour',
  'equivalence',
  'property',
  'formula',
  'direction',
]);

/** "Yes, as a number.", "Yes, but only on paper." */
export const QUALIFIED =
  /\b(?:but|if|except|though|as (?:a )?numbers?|numerically|on paper|other way|reverse)\b/;

/** "Yes, with a dilator.", "Yes, over a wire.": something helps. */
export const WITH = /\b(?:with|over|after|once|when|using|dilat\w+)\b(?! ease\b)/;
