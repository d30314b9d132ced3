/** What is said to become of a thread in the body: it stays until somebody takes it out, or it goes by itself. */
import { onlyHow } from './how-fast.ts';

const GOES =
  /\b(?:(?:never|not) (?:have|need) to (?:be )?(?:remove|come out|take)|no (?:removal|suture removal)|(?<!\b(?:not|never|cannot|\w{2,5}n't) )(?:go|goes) away (?:by (?:itself|themselves)|on (?:its|their) own)|(?:gone|disappears?|melts? away) (?:in|within|by itself|on its own|after)|(?:will|has|have) (?:have |be )?(?:dissolved|absorbed|gone)|(?:does|do|will) (?:indeed |in fact |eventually |finally |slowly )(?:absorb|dissolve)|dissol(?:ve|ves|ving) (?:by|on|in|within|over|after)|(?:it|body|tissue|thread|suture|which|that|they) (?:slowly |completely |fully )?(?:absorbs?|dissolves?)|(?:is|are|gets|be) (?:slowly |completely |fully )?(?:absorbed|resorbed|hydroly[sz]ed)|need(?:s)? not come out|(?<!\b(?:not|never|cannot|\w{2,5}n't) )(?:melts?|dissolves?|drops? (?:out|off)|falls? (?:out|off)|go|goes|disappears?) (?:away )?(?:by (?:it|them)sel(?:f|ves)|on (?:its|their) own)|(?:breaks?|broken?|broke|digests?|digested) (?:it|them) down|(?:is|are|gets?) (?:slowly |soon )?(?:broken down|digested)|(?:tissues?|body) (?:slowly |gradually |will |has )?(?:takes?|took|taken) (?:it |them )?up|(?:has|have) been (?:absorbed|dissolved|resorbed)|(?:does|do) not need (?:removing|removal|to be removed)|there is nothing to (?:remove|take out)|melts? away|wastes? away|vanish(?:es)?|fades? away|(?:no ?one|nobody) (?:will |ever )?(?:needs?|has|have) (?:to )?(?:take|remove|pull|cut|come)|no (?:need|reason) to (?:take|remove|pull|cut)|needs? no (?:removal|removing|taking out)|(?:come|comes) (?:out|away) (?:by (?:itself|themselves)|on (?:its|their) own)|(?:tissues?|body) (?:slowly |gradually |soon |quickly )?(?:breaks?|eats?|digests?|takes?|clears?) (?:[a-z]+ ){1,2}(?:down|up|away)|(?:is|are|gets?) (?:slowly |gradually )?(?:eaten|cleared|taken) (?:away |up )?by)\b/;
const STAYS =
  /\b(?:(?<!\b(?:not|never|no|nothing|nobody|don't|doesn't|won't|no (?:stitch|stitches|suture|sutures|thread|threads|knot|knots)) (?:[a-z]+ly |also |ever |then |still |else |of it )?)(?:needs?|has|have|got) (?:to )?(?:come out|be (?:taken out|removed|cut out|pulled out|snipped out)|removal|removing)|(?:stays?|remains?)(?: in)? (?:until|till) (?:you|we|somebody|someone|the nurse|it is|they are) (?:takes?|cuts?|removes?|taken|removed|cut)|(?:stays?|remains?) (?:in )?(?:for good|for ?ever|for life|permanently)|(?:will|does|do) (?:not|never) (?:absorb|dissolve)(?! (?:quickly|fast|soon|as|so|until|before|for|at once|overnight|straight|evenly|well|completely|fully))|(?:is|are) (?:not|never) (?:absorbed|resorbed)|never (?:be )?(?:absorbs?|dissolves?|absorbed|dissolved)|(?:will|can) not be (?:absorbed|dissolved)|lasts? (?:for ?ever|for ever|forever|for good|for life|indefinitely)|must (?:come out|be (?:taken out|cut out|removed))|never (?:goes? away|disappears?)|won't (?:absorb|dissolve)|doesn't (?:absorb|dissolve)|(?<!(?:no ?one|nobody|no need|no reason|not|never|without|needn't|don't)[a-z ]{0,16})take (?:it|them)(?: all)? out|(?:is|are) there for (?:life|good|ever)|(?:carry|carries|keeps?) (?:it|them) for (?:life|good|ever)|never (?:leaves?|melts?|vanish(?:es)?|breaks? down)|(?:does|do|will) not (?:melt|go away|break down|disappear|vanish)|(?:body|tissues?) (?:cannot|can't|never|does not|do not|will not|won't) (?:break|digest|absorb|dissolve|clear)s?|(?:has|have|needs?) to be (?:cut|pulled|snipped|taken) (?:out|away)|come back to have (?:it|them) (?:out|removed))\b/;

/** Every fate has one of these words. */
export const FATE_WORDS =
  /\b(?:remov|come|take|away|gone|disappear|melt|dissol|absorb|resorb|hydroly|stay|remain|last|broken|break|broke|digest|there|vanish|fade|left$|left |wast|carr|keep|persist|linger|sits?$|lies$|disintegr|degrad|goes$|going$|go$|cut$|cut |snip|pull|destroy|consum|swallow|needs?$|eat|clear|drop|fall|must|taken|took)/;

export interface Fate {
  readonly property: 'absorbable:yes' | 'absorbable:no';
  /** Offset of the words in the text given. */
  readonly at: number;
}

/** "does not dissolve", "is never absorbed". */
const NEGATED =
  /\b(?:not|never|won't|doesn't|isn't)\b.* ?(?:absorb|dissolve|melt|away|down|disappear|vanish|resorb)/;
/** The fate that a stretch of lower-case words gives a thread, when it gives just one. */
export function fateIn(text: string): Fate | undefined {
  const stays = STAYS.exec(text);
  const rest = stays ? text.replace(stays[0], ' '.repeat(stays[0].length)) : text;
  const goes = GOES.exec(rest);
  if (stays && goes) return undefined;
  if (stays && NEGATED.test(stays[0]) && onlyHow(text.slice(stays.index + stays[0].length))) return undefined;
  const hit = stays ?? goes;
  return hit ? { property: stays ? 'absorbable:no' : 'absorbable:yes', at: hit.index } : undefined;
}
