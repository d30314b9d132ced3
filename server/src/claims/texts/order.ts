/** Sizes set in an order. */
import type { Texts } from '../../texts/index.ts';

export const ORDER = {
  says: {
    en: 'Says these run from {first} to {last}: {items}.',
    de: 'Hier steht: Diese laufen von „{first}“ nach „{last}“: {items}.',
  },
  uncompared: {
    en: 'Not every pair here can be compared.',
    de: 'Nicht jedes Paar lässt sich hier vergleichen.',
  },
  right: { en: 'The order holds.', de: 'Die Reihenfolge stimmt.' },
  holds: {
    en: '{first} {outcome} {second}, so they do not stand in that order: {rule}.',
    de: '{first} {outcome} {second}; in dieser Reihenfolge stehen sie also nicht: {rule}.',
  },
} as const satisfies Texts;
