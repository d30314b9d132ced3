/** Sentences that set a task and state nothing: "Pick the stoutest: 12 Fr, 20 Fr, 28 Fr", "Thinnest to thickest, please: …". */
import type { Item } from './items.ts';
import { joined } from './joined.ts';
import { remembered } from './remember.ts';

const HEAD = 6;
const TASK =
  /^(?:[\W\d]*(?:q ?\d+ )?[\W\d]*)?(?:(?:\w+ )?: )?(?:now |please |and |then )?(?:pick|choose|select|name|spot|identify|underline|circle|tick|ring|mark|point (?:to|at)|find|sort|rank|order) (?:me |out )?(?:the|these|those|this|which)\b|^(?:[\W\d]*(?:q ?\d+ )?[\W\d]*)?(?:now |please )?(?:write|put|arrange|list|place|copy|line up|set out) (?:me |out |down )?(?:these|those|the following)\b/;
const PLEASE = /^[^.]*\bplease(?: [,:]| :)/;

export const setsTask = remembered((items: readonly Item[]): boolean => {
  const text = joined(items, 0, HEAD + 2);
  const listed = items.some(({ word }) => word === ':');
  return (
    listed &&
    (/^(?:pick|choose|tick|circle|underline|ring) :/.test(text) ||
      TASK.test(text) ||
      PLEASE.test(joined(items, 0, HEAD + HEAD)))
  );
});
