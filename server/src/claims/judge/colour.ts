/** Hub colours: on the code of the device, or, when no device is said, on every code that could be meant. */

import type { Note } from '../../notes/model.ts';
import {
  COLOURS,
  type Colour,
  type ColourCode,
  colourCodeOf,
  colourOf,
  gaugesOf,
  label,
} from '../../sizes/index.ts';
import type { Device, Size } from '../../sizes/model.ts';
import { list, type Part, phrase, quote } from '../../texts/index.ts';
import type { ColourClaim } from '../model.ts';
import { COLOUR, COLOURED } from '../texts/colours.ts';
import { FRAME } from '../texts/frame.ts';
import { REPAIR } from '../texts/repairs.ts';
import { COLOUR_WORDS } from '../words/colours.ts';
import { cannotTell, type Judgement, sourceNames } from './model.ts';

export function judgeColour(claim: ColourClaim, note: Note): Judgement {
  const size = claim.size.sizes[0];
  if (!size || claim.size.sizes.length > 1) return cannotTell('', '');
  const says = phrase(COLOUR.says, { size: label(size), colour: claim.colour });
  if (claim.code === 'none') return cannotTell(says, phrase(COLOUR.unlisted));
  const codes = codesFor(size, claim);
  // With no device said, a size that only one code has is of that code: there is no 25 G in the list of cannulas.
  const known = codes.flatMap((code) => {
    const row = colourOf(code, size.value);
    return row ? [{ code, row }] : [];
  });
  const [only, ...others] = codes;
  if (only && others.length === 0 && known.length === 0) return elsewhere(only, size, claim, says);
  if (known.length === 0 || known.some(({ row }) => row.confidence === 'memory'))
    return cannotTell(says, phrase(COLOUR.unlisted));
  const fits = known.some(({ row }) => row.families.includes(claim.colour));
  const colours = known.map(({ code, row }) =>
    phrase(COLOUR.on, { colours: list(row.colours, FRAME.or), where: phrase(COLOURED[code]) }),
  );
  const sources = known.flatMap(({ row }) => row.sources).slice(0, 4);
  const holds = phrase(COLOUR.holds, { size: label(size), colours: list(colours, FRAME.and) });
  // Where a needle and a cannula share the word, the one's colour would be wrong for the other.
  const own = claim.construction !== 'either-hub';
  const repair = own && !fits && known.length === 1 ? colourEdit(note, claim, known[0]!.row) : undefined;
  return {
    verdict: fits ? 'agrees' : 'contradicted',
    says,
    holds,
    source: list(
      known.map(({ code }) => (code.startsWith('ISO') ? code : sourceNames(sources))),
      FRAME.comma,
    ),
    sources,
    ...(repair ? { repair } : {}),
    ...(known.every(({ row }) => row.families.includes(claim.colour)) ? {} : { partly: true }),
    steps: known.map(({ code, row }) => ({
      label: 'value' as const,
      text: phrase(COLOUR.value, { size: label(size), colour: row.colour, code }),
      sources: row.sources,
      confidence: row.confidence,
    })),
  };
}

/** The device's code gives the colour to other sizes and has no colour for this one. */
function elsewhere(code: ColourCode, size: Size, claim: ColourClaim, says: Part): Judgement {
  const sizes = gaugesOf(code, claim.colour);
  if (sizes.length === 0 || !code.startsWith('ISO')) return cannotTell(says, phrase(COLOUR.unlisted));
  const { sources } = colourOf(code, sizes[0]!)!;
  const shown = list(
    sizes.map((gauge) => label({ ...size, value: gauge })),
    FRAME.or,
  );
  return {
    verdict: 'contradicted',
    says,
    holds: phrase(COLOUR.elsewhere, { colour: claim.colour, sizes: shown, where: phrase(COLOURED[code]) }),
    source: code,
    sources,
    steps: [
      { label: 'value', text: phrase(COLOUR.value, { size: claim.colour, colour: shown, code }), sources },
    ],
  };
}

function codesFor(size: Size, claim: ColourClaim): ColourCode[] {
  const device = claim.device ?? (claim.code === 'any' ? undefined : toldDevice(size, claim.size.device));
  const code = device ? colourCodeOf(device) : undefined;
  const fits = (one: ColourCode) => one.startsWith('ISO') === (size.system === 'needle-gauge');
  if (code) return fits(code) ? [code] : [];
  if (size.system !== 'needle-gauge' || (device && device !== 'catheter')) return [];
  return (Object.keys(COLOURS) as ColourCode[]).filter(fits);
}

/**
 * The thing that the surroundings give the size. A hub is said of needles and cannulas alike: without a word for either,
 * both codes could be meant; so is a colour on the line below a winged set. A gauge that no cannula has is a needle's,
 * whatever the note is about.
 */
function toldDevice(size: Size, device: Device | undefined): Device | undefined {
  const code = device === 'cannula' ? colourCodeOf(device) : undefined;
  const strange = code !== undefined && !colourOf(code, size.value);
  return device === 'needle' || device === 'winged-set' || strange ? undefined : device;
}

/** The everyday word: a note that says "pink" goes on with "green", where the code says "deep green". */
function colourEdit(note: Note, claim: ColourClaim, { family: colour }: Colour) {
  const word = note.text.slice(claim.focus.start, claim.focus.end);
  // The letter of a choice is no colour, whatever it stands for.
  const last = /\p{L}+$/u.exec(word)?.[0].toLowerCase();
  if (!/^[\p{L} -]+$/u.test(word) || last === undefined || !COLOUR_WORDS.has(last)) return undefined;
  const text =
    word.charAt(0) === word.charAt(0).toLowerCase()
      ? colour
      : colour.charAt(0).toUpperCase() + colour.slice(1);
  return { title: phrase(REPAIR.colour, { text: quote(text) }), edit: { span: claim.focus, text } };
}
