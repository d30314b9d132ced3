/** A claim judged in its place. */
import type { Context } from '../mentions/model.ts';
import type { Note } from '../notes/model.ts';
import { settleCode } from './constructions/hub-settle.ts';
import { judge as judgeSettled } from './judge/index.ts';
import type { Claim, Stance, Statement } from './model.ts';

/** What the place of a claim settles is settled; then it is judged. */
export const judge = (claim: Claim, stance: Stance, note: Note, context?: Context): Statement =>
  judgeSettled(claim.kind === 'colour' ? settleCode(claim, note) : claim, stance, note, context);
