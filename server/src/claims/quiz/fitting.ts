/** A question that puts one thing into another, and a reply that it goes: "Why not put the 0.035 in wire down the 21 G? It goes, with a twist." */
import type { Claim } from '../model.ts';
import { textOf } from '../text/joined.ts';
import { type Desk, readAs, sceneOf } from './desk.ts';
import type { Pair } from './pairs.ts';

/** The claim that the thing goes through; undefined where the reply says anything else. */
export function fitting({ question, reply }: Pair, desk: Desk): Claim | undefined {
  if (!GOES.test(textOf(reply.items)) || OPEN.test(textOf(question.items))) return undefined;
  const scene = sceneOf(desk, question);
  const items = question.items.filter(({ word }) => word !== '?');
  const put = items.findLastIndex(
    ({ word }, i) => PUTS.test(word) && items.slice(i).some(({ mention }) => mention),
  );
  const body = put < 0 ? items : items.slice(put);
  const claims = scene ? [...readAs(scene, body), ...readAs(scene, items)] : [];
  return claims.find(({ kind }) => kind === 'fit');
}

/** It goes, and nothing helps but the hand. */
const GOES =
  /^(?:(?:yes|yep|sure|of course|certainly) (?:[,.;:] )?)?(?:(?:it|that|this|they|the wire) (?:(?:just|always|really|even) )?(?:goes|go|fits?|pass(?:es)?|slides?|will(?! not)|does(?! not)|do(?! not)|can(?! not))(?: (?:go|fit|pass|in|through|down|easily|well|nicely|fine|straight|perfectly|happily|smoothly))*|yes)(?: , (?:with|after) (?:a (?:little |bit of |bit of a |gentle |good |slight )*(?:twist|push|wiggle|pressure|patience|effort|spit|saline|care)|ease|care|patience))?(?: , (?:easily|no problem|nicely|every time))?(?: [.!;])?$/;
const PUTS = /^(?:put|pass|thread|feed|push|slide|run|send|drop|get|insert|advance|go|fit)$/;
const OPEN = /\b(?:if|or|which|what|not (?:go|fit|pass)|wouldn't|won't|doesn't|can't|larger|bigger|other)\b/;
