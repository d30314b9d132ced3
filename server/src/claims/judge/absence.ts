/** Sizes said not to exist: contradicted only by one that surely does, right only where surely none does. */
import { fullLabel, label, type Made, neighbours, PARTLY_SERIES, surelyMade } from '../../sizes/index.ts';
import type { Lens, Size } from '../../sizes/model.ts';
import { type Phrase, phrase } from '../../texts/index.ts';
import type { ExistenceClaim } from '../model.ts';
import { FRAME } from '../texts/frame.ts';
import { ABSENT, WHOLE_SERIES } from '../texts/missing.ts';
import { cannotTell, type Judgement, lensOf, mm, sourceNames } from './model.ts';
import { labels } from './words.ts';

/** A claim of absence, as `ExistenceClaim` has it. */
export type AbsenceClaim = ExistenceClaim & { readonly absent: NonNullable<ExistenceClaim['absent']> };

export function judgeAbsent(claim: AbsenceClaim): Judgement {
  const says = saysOf(claim);
  const lens = lensOf(claim.size);
  const tried = madeOf(claim) ?? candidates(claim, lens).map((size) => ({ size, ...surelyMade(size, lens) }));
  const there = tried.find(({ made }) => made === 'yes');
  const settling = there ?? (tried.every(({ made }) => made === 'no') ? tried[0] : undefined);
  if (!settling) return cannotTell(says, '');
  const { size, sources } = settling;
  const because =
    settling.mm === undefined ? settling.because : phrase(ABSENT.needle, { mm: mm(settling.mm) });
  return {
    verdict: there ? 'contradicted' : 'agrees',
    says,
    holds: there
      ? phrase(HOLDS[claim.absent], { size: nameOf(size), because })
      : phrase(ABSENT.none, { because }),
    source: sourceNames(sources),
    sources,
    steps: [{ label: 'value', text: because, sources }],
  };
}

const HOLDS = {
  itself: ABSENT.exists,
  uneven: ABSENT.exists,
  half: ABSENT.exists,
  finer: ABSENT.finerExists,
  thicker: ABSENT.thickerExists,
  between: ABSENT.betweenExists,
} as const;

function saysOf({ absent, series, size: { sizes } }: AbsenceClaim): Phrase {
  if (absent === 'uneven' || absent === 'half')
    return phrase(ABSENT[absent], { things: phrase(WHOLE_SERIES[series ?? 'needle']) });
  const [first] = sizes;
  if (first && (absent === 'finer' || absent === 'thicker'))
    return phrase(ABSENT[absent], { size: nameOf(first) });
  return phrase(ABSENT[absent], { size: labels(sizes, absent === 'between' ? ABSENT.and : FRAME.or) });
}

/** A whole number by itself would not look like a size. */
const nameOf = (size: Size): string =>
  size.system === 'usp' && size.value > 0 ? fullLabel(size) : label(size);

/** What is made of a series that is none of hypodermic needles. */
function madeOf({ series, absent }: AbsenceClaim): readonly (Made & { readonly size: Size })[] | undefined {
  const row = series && PARTLY_SERIES[series];
  const sizes = row && (absent === 'half' ? row.half : row.odd);
  return sizes?.map((size) => ({ size, made: 'yes', because: row!.because, sources: [] }));
}

/** The gauges of every needle cupboard that are no even numbers. */
const UNEVEN = [19, 21, 23, 25, 27].map((value): Size => ({ system: 'needle-gauge', value }));

/** The sizes of which one that exists would break the claim. */
function candidates({ absent, size: { sizes } }: AbsenceClaim, lens: Lens): readonly Size[] {
  const [first, second] = sizes;
  if (absent === 'uneven' || absent === 'half') return absent === 'half' ? [] : UNEVEN;
  if (!first || absent === 'itself') return sizes;
  if (absent === 'between') return second ? inside(first, second) : [];
  const side = absent === 'finer' ? 'thinner' : 'thicker';
  const next = neighbours(first, lens)[side];
  if (!next) return [past(first, absent)];
  // Not every guidewire is named by more than one text; one that is will do.
  const further = first.system === 'wire-inch' ? neighbours(next, lens)[side] : undefined;
  return further ? [next, further] : [next];
}

/** Whole steps between two sizes of one scale. */
function inside({ system, value }: Size, other: Size): Size[] {
  const [low, high] = [Math.min(value, other.value), Math.max(value, other.value)];
  return Array.from({ length: Math.max(0, high - low - 1) }, (_, i) => ({ system, value: low + i + 1 }));
}

/** One step behind the last of the series. */
const past = ({ system, value }: Size, absent: 'finer' | 'thicker'): Size => ({
  system,
  value: (absent === 'finer') === (system === 'usp') ? value - 1 : value + 1,
});
