/** Points of surgical needles. */
import type { Texts } from '../../texts/index.ts';

export const POINT = {
  saysNone: { en: 'Says a {point} needle has no edge.', de: 'Hier steht: Eine {point} hat keine Schneide.' },
  saysSome: {
    en: 'Says a {point} needle has a cutting edge.',
    de: 'Hier steht: Eine {point} hat eine Schneide.',
  },
  saysCurve: {
    en: 'Says the edge of a {point} needle lies on the {curve} curve.',
    de: 'Hier steht: Eine {point} hat ihre Schneide an der {curve} der Krümmung.',
  },
  saysFlat: {
    en: 'Says the flat side of a {point} needle lies on the {curve} curve.',
    de: 'Hier steht: Eine {point} hat ihre flache Seite an der {curve} der Krümmung.',
  },
  holds: { en: 'A {point} needle {where}.', de: 'Eine {point} {where}.' },
  edgeless: { en: 'has no cutting edge', de: 'hat keine Schneide' },
  sided: { en: 'has its edges at the sides', de: 'hat ihre Schneiden an den Seiten' },
  curved: {
    en: 'has its third edge on the {curve} curve',
    de: 'hat ihre dritte Schneide an der {curve} der Krümmung',
  },
  flatAcross: {
    en: 'has its flat side on the {curve} curve, across from its third edge',
    de: 'hat ihre flache Seite an der {curve} der Krümmung, gegenüber der dritten Schneide',
  },
  tears: {
    en: 'A conventional cutting needle has its edge towards the wound and can cut out; a reverse cutting needle is the safer.',
    de: 'Eine innen schneidende Nadel hat ihre Schneide zur Wunde hin und kann ausreißen; eine außen schneidende Nadel ist die sicherere.',
  },
  saysTears: {
    en: 'Says a {kind} cutting needle is the likelier to cut out.',
    de: 'Hier steht: Eine {kind} schneidende Nadel reißt eher aus.',
  },
  conventional: { en: 'conventional', de: 'innen' },
  reverse: { en: 'reverse', de: 'außen' },
  saysUse: { en: 'Says a {point} needle is for {tissue}.', de: 'Hier steht: Eine {point} ist für {tissue}.' },
  use: { en: 'A {point} needle is for {use}{better}.', de: 'Eine {point} ist für {use}{better}.' },
  better: { en: '; for {tissue} take a {point} needle', de: '; für {tissue} nimmt man eine {point}' },
  saysSection: {
    en: 'Says a {point} needle is {shape} in section.',
    de: 'Hier steht: Eine {point} ist im Querschnitt {shape}.',
  },
  section: { en: 'A {point} needle is {shape} in section.', de: 'Eine {point} ist im Querschnitt {shape}.' },
} as const satisfies Texts;
