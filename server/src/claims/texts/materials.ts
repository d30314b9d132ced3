/** What suture materials are, and how long they last. */
import type { Texts } from '../../texts/index.ts';

export const MATERIAL = {
  says: { en: 'Says {material} is {property}.', de: 'Hier steht: {^material} ist {property}.' },
  holds: { en: '{^material} is {described}.', de: '{^material} ist {described}.' },
  described: {
    en: '{origin}, {absorbed} and {structure}',
    de: '{origin}, {absorbed} und {structure}',
  },
} as const satisfies Texts;

export const LASTING = {
  saysStrength: {
    en: 'Says {longer} holds longer than {shorter}.',
    de: 'Hier steht: {^longer} hält länger als {shorter}.',
  },
  saysAbsorption: {
    en: 'Says {longer} is absorbed later than {shorter}.',
    de: 'Hier steht: {^longer} wird später resorbiert als {shorter}.',
  },
  saysBoth: {
    en: 'Says {longer} lasts longer than {shorter}.',
    de: 'Hier steht: {^longer} überdauert {shorter}.',
  },
  outlasts: { en: '{^longer} outlasts {shorter}.', de: '{^longer} überdauert {shorter}.' },
  saysGone: {
    en: 'Says {material} is gone after {days} days.',
    de: 'Hier steht: {^material} ist nach {days} Tagen verschwunden.',
  },
  absorbed: {
    en: '{^material} is absorbed in about {least} to {most} days.',
    de: '{^material} wird in etwa {least} bis {most} Tagen resorbiert.',
  },
  saysWeak: {
    en: 'Says {material} has lost its strength after {days} days.',
    de: 'Hier steht: {^material} hat nach {days} Tagen seine Reißfestigkeit verloren.',
  },
  saysHalf: {
    en: 'Says {material} has half its strength after {days} days.',
    de: 'Hier steht: {^material} hat nach {days} Tagen die halbe Reißfestigkeit.',
  },
  saysMost: {
    en: 'Says {material} has most of its strength after {days} days.',
    de: 'Hier steht: {^material} hat nach {days} Tagen den größten Teil der Reißfestigkeit.',
  },
  holds: {
    en: '{^material} holds for about {least} to {most} days.',
    de: '{^material} hält etwa {least} bis {most} Tage.',
  },
  keeps: {
    en: '{^material} keeps strength for months or longer.',
    de: '{^material} behält seine Reißfestigkeit über Monate oder länger.',
  },
  days: { en: '{low} to {high}', de: '{low} bis {high}' },
} as const satisfies Texts;
