/**
 * Sizes listed under a limit or a class: "## Fine threads (5-0 and finer)", "Nothing thicker than 4-0 on the face:",
 * "## Large-bore cannulas". Each item that opens with a size is said to belong there.
 */
import type { Context } from '../mentions/model.ts';
import type { Note } from '../notes/model.ts';
import { type Form, formsIn, rowFor } from './constructions/class-forms.ts';
import { judgeCategory } from './judge/category.ts';
import { judgeLimit } from './judge/limit.ts';
import { itemLists, leadItems, leading } from './lists.ts';
import type { CategoryClaim, LimitClaim, Operand, Verdict } from './model.ts';
import type { Item } from './text/items.ts';
import { type Limit, limitsIn } from './text/limits.ts';
import { groups } from './text/scene.ts';
import type { Read } from './text/scenes.ts';
import { MISTAKE_WORDS } from './words/frames.ts';
import { EXCEPTS, PATIENTS } from './words/limits.ts';

type Claim = LimitClaim | CategoryClaim;

export function readHeaded(note: Note, reads: readonly Read[], context?: Context): Claim[] {
  return itemLists(reads).flatMap((items) => {
    const first = items[0];
    const lead = first ? leadItems(note, reads, first) : [];
    const said = lead.length > 0 ? headOf(lead, first !== undefined && isSentence(reads, first)) : undefined;
    if (!said) return [];
    const young = lead.some(({ word }) => PATIENTS.test(word));
    const claims = items.flatMap((item) => claimOf(said, item, young));
    return settled(claims, context);
  });
}

/** A paragraph leads in with a sentence; one in strong type is a heading. */
function isSentence(reads: readonly Read[], first: Read): boolean {
  const lead = reads[first.passage.list?.leadIn ?? -1]?.passage;
  const strong = lead?.marks.some(
    (mark) => mark.kind === 'strong' && mark.start <= 1 && mark.end >= lead.text.trimEnd().length - 1,
  );
  return lead !== undefined && strong !== true;
}

type Head = { readonly limit: Limit } | { readonly form: Form };

/** Words of a heading beside its limit or class; more of them make it a statement about something else. */
const FEW = 6;
const FEW_OF_LEAD = 9;

function headOf(lead: readonly Item[], sentence: boolean): Head | undefined {
  if (sentence && lead.at(-1)?.word !== ':') return undefined;
  const [limit, ...more] = limitsIn(lead);
  if (more.length > 0) return undefined;
  if (limit) return groups(lead).length === 1 && plain(lead, limit, sentence) ? { limit } : undefined;
  const forms = formsIn(lead);
  const only = forms[0];
  const alone = only && forms.length === 1 && !lead.some((item) => item.kind === 'size');
  return alone && plain(lead, { from: only.at, to: only.to }, false) ? { form: only } : undefined;
}

function plain(
  lead: readonly Item[],
  { from, to }: { from: number; to: number },
  sentence: boolean,
): boolean {
  const rest = [...lead.slice(0, from), ...lead.slice(to + 1)].filter((item) => item.kind !== 'punctuation');
  const asks = lead.some((item) => item.word === '?');
  return (
    !asks &&
    rest.length <= (sentence ? FEW_OF_LEAD : FEW) &&
    !rest.some((item) => EXCEPTS.test(item.word) || MISTAKE_WORDS.has(item.word) || TURNS.test(item.word))
  );
}
/** "or", "in place of", "compared": the list may hold the other side. */
const TURNS =
  /^(?:or|place|replaces?|replaced|compared|alternatives?|besides|beside|other|others|all|compare|choose|which|why|need|needs|takes?|through|into|quiz|questions?|test|limits?)$/;

function claimOf(head: Head, read: Read, young: boolean): Claim[] {
  const size = leading(read);
  if (!size || size.mentions[0]!.bound || size.mentions[0]!.kind !== 'size') return [];
  const excepts = (word: string) => EXCEPTS.test(word) || (!young && PATIENTS.test(word));
  if (read.items.some((item) => item.kind !== 'size' && excepts(item.word))) return [];
  const base = { construction: 'headed', span: size.span, focus: size.span, size };
  if ('form' in head) {
    const row = rowFor(head.form, size);
    return row ? [{ ...base, kind: 'category', category: row.id, member: true }] : [];
  }
  const { bound, side, strict } = head.limit;
  if (bound.sizes[0]!.system !== size.sizes[0]!.system) return [];
  return [{ ...base, kind: 'limit', bound: operandOf(bound), side, strict }];
}

function operandOf({ sizes, mentions }: Limit['bound']): Operand {
  const { device, material, source } = mentions[0]!;
  return { sizes, mentions, span: source, ...(device ? { device } : {}), ...(material ? { material } : {}) };
}

/** A list of which nothing fits its head is a list of something else. */
function settled(claims: readonly Claim[], context?: Context): readonly Claim[] {
  const verdicts = claims.map(
    (claim): Verdict =>
      claim.kind === 'limit' ? judgeLimit(claim, context).verdict : judgeCategory(claim).verdict,
  );
  return verdicts.includes('agrees') ? claims : [];
}
