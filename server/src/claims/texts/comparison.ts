/** Sizes compared. */
import type { Texts } from '../../texts/index.ts';

export const COMPARISON = {
  says: { en: 'Says {left} {relation} {right}.', de: 'Hier steht: {left} {relation} {right}.' },
  unsettled: { en: 'A size alone does not settle this.', de: 'Eine Größe allein entscheidet das nicht.' },
  alike: {
    en: '{left} and {right} cannot be told apart by size alone.',
    de: '{left} und {right} lassen sich allein nach der Größe nicht unterscheiden.',
  },
  oneSize: {
    en: 'These are two ways to write one size, {size}.',
    de: 'Das sind zwei Schreibweisen derselben Größe, {size}.',
  },
  holds: { en: '{left} {relation} {right}: {rule}.', de: '{left} {relation} {right}: {rule}.' },
  measured: { en: '{size} ({measure})', de: '{size} ({measure})' },
  value: { en: '{left} {outcome} {right}: {because}', de: '{left} {outcome} {right}: {because}' },
} as const satisfies Texts;

export const OUTCOME = {
  thicker: { en: 'is thicker than', de: 'ist dicker als' },
  thinner: { en: 'is thinner than', de: 'ist dünner als' },
  same: { en: 'is the same as', de: 'ist gleich' },
  'cannot-tell': { en: 'cannot be set against', de: 'lässt sich nicht vergleichen mit' },
} as const satisfies Texts;

/** By axis: more, less, the same. With the verb. */
export const RELATION = {
  outer: [
    { en: 'is thicker than', de: 'ist dicker als' },
    { en: 'is thinner than', de: 'ist dünner als' },
    { en: 'is as thick as', de: 'ist so dick wie' },
  ],
  bore: [
    { en: 'is wider inside than', de: 'ist innen weiter als' },
    { en: 'is narrower inside than', de: 'ist innen enger als' },
    { en: 'is as wide inside as', de: 'ist innen so weit wie' },
  ],
  flow: [
    { en: 'flows faster than', de: 'hat mehr Durchfluss als' },
    { en: 'flows slower than', de: 'hat weniger Durchfluss als' },
    { en: 'flows as fast as', de: 'hat so viel Durchfluss wie' },
  ],
  strength: [
    { en: 'is stronger than', de: 'ist reißfester als' },
    { en: 'is weaker than', de: 'ist weniger reißfest als' },
    { en: 'is as strong as', de: 'ist so reißfest wie' },
  ],
  hole: [
    { en: 'makes a larger hole than', de: 'macht ein größeres Loch als' },
    { en: 'makes a smaller hole than', de: 'macht ein kleineres Loch als' },
    { en: 'makes as large a hole as', de: 'macht ein so großes Loch wie' },
  ],
  number: [
    { en: 'is higher than', de: 'ist höher als' },
    { en: 'is lower than', de: 'ist niedriger als' },
    { en: 'is equal to', de: 'ist gleich' },
  ],
  other: [
    { en: 'is more than', de: 'ist mehr als' },
    { en: 'is less than', de: 'ist weniger als' },
    { en: 'is the same as', de: 'ist gleich' },
  ],
} as const;
