/** Comparisons, orders, ranges, limits and directions, judged. */
import { describe, expect, it } from 'vitest';
import type { Axis, ComparisonClaim, Operand, Relation } from '../../../server/src/claims/model.ts';
import { at, judged, NOBODY, type Said, side } from './claims.ts';

const gauge = (text: string) => side('needle-gauge', text);
const compare = (left: Operand, relation: Relation, right: Operand, axis: Axis = 'outer'): Said => ({
  kind: 'comparison', left, relation, right, axis,
}); // biome-ignore format: a value

describe('a comparison', () => {
  it.each([
    [gauge('18'), 'more', gauge('22'), 'agrees'],
    [gauge('18'), 'less', gauge('22'), 'contradicted'],
    [gauge('18'), 'same', gauge('22'), 'contradicted'],
    [gauge('18'), 'same', gauge('18'), 'agrees'],
    [gauge('18'), 'more', gauge('18'), 'contradicted'],
    [side('usp', '3'), 'more', side('usp', '4'), 'cannot-tell'],
    [side('usp', '2-0'), 'more', side('usp', '3-0'), 'agrees'],
    [side('french', '14'), 'less', side('millimetre', '5'), 'agrees'],
    [side('french', '14'), 'more', side('millimetre', '5'), 'contradicted'],
  ] as const)('%o %s %o: %s', (left, relation, right, verdict) => {
    expect(judged(compare(left, relation, right)).verdict).toBe(verdict);
  });

  it('of several sizes is settled when all agree, or when each is meant and one breaks it', () => {
    const rest = side('needle-gauge', ['20', '16']);
    expect(judged(compare(gauge('18'), 'more', rest)).verdict).toBe('cannot-tell');
    const each = judged({ ...compare(gauge('18'), 'more', rest), each: true } as Said);
    expect(each.verdict).toBe('contradicted');
    expect(each.holds).toContain('16 G');
    expect(judged(compare(gauge('18'), 'more', side('needle-gauge', ['20', '22']))).verdict).toBe('agrees');
    expect(
      judged({ ...compare(gauge('18'), 'more', side('needle-gauge', ['16', '20'])), each: true } as Said)
        .verdict,
    ).toBe('contradicted');
    expect(judged(compare(gauge('18'), 'more', NOBODY))).toMatchObject({ verdict: 'cannot-tell', holds: '' });
    expect(judged(compare(NOBODY, 'more', gauge('18'))).verdict).toBe('cannot-tell');
  });

  it('names both sides, what holds and why', () => {
    const said = judged(compare(gauge('18'), 'less', gauge('22')));
    expect(said.says).toBe('Says 18 G is thinner than 22 G.');
    expect(said.holds).toMatch(
      /^18 G \(.+ mm\) is thicker than 22 G \(.+ mm\): a larger gauge number is thinner\.$/,
    );
    expect(said.derivation.map(({ label }) => label)).toEqual(['read', 'rule', 'value', 'result']);
    expect(said.derivation[2]!.text).toMatch(/^18 G is thicker than 22 G: /);
    expect(judged(compare(side('usp', '3'), 'more', side('usp', '4'))).holds).toBe(
      '3 and 4 cannot be told apart by size alone.',
    );
    expect(judged(compare(side('usp', '2-0'), 'less', side('usp', '3-0'))).holds).toContain(
      'more zeros are thinner',
    );
    expect(judged(compare(side('usp', '2'), 'less', side('usp', '2-0'))).holds).toContain(
      'whole numbers above 0 are thicker',
    );
    expect(judged(compare(side('french', '14'), 'more', side('millimetre', '5'))).holds).toMatch(
      /is thinner than 5 mm: both said in millimetres\.$/,
    );
  });

  it('names its sources, or the rule where no table has the sizes', () => {
    expect(judged(compare(gauge('18'), 'less', gauge('22'))).source).not.toContain('gauge number');
    expect(judged(compare(gauge('18'), 'less', gauge('22'))).source).not.toBe('');
    expect(judged(compare(side('tube-id', '7'), 'more', side('tube-id', '8'))).source).toBe(
      'a larger number is wider inside',
    );
  });

  it('of one length in two systems is no comparison of numbers', () => {
    const same = judged(compare(side('french', '6'), 'more', side('millimetre', '2')));
    expect([same.verdict, same.holds]).toEqual([
      'contradicted',
      '6 Fr (2 mm) is as thick as 2 mm: both said in millimetres.',
    ]);
    expect(judged(compare(side('hegar', '8'), 'more', side('millimetre', '8'))).holds).toMatch(
      /is as thick as 8 mm/,
    );
  });

  it('shows the sizes in words when they differ, whatever was written', () => {
    const written = (text: string) => side('needle-gauge', text, { text: `number ${text}` });
    expect(judged(compare(written('18'), 'less', written('22'))).says).toBe(
      'Says 18 G is thinner than 22 G.',
    );
    expect(judged(compare(written('18'), 'more', gauge('18'))).says).toBe('Says 18 G is thicker than 18 G.');
    expect(judged(compare(gauge('18'), 'more', written('18'))).says).toBe('Says 18 G is thicker than 18 G.');
  });

  it('of the outside holds between things of different kinds', () => {
    const needle = side('needle-gauge', '18', { device: 'needle' });
    const cannula = side('needle-gauge', '22', { device: 'cannula' });
    expect(judged(compare(needle, 'less', cannula)).verdict).toBe('contradicted');
    expect(
      judged(compare(needle, 'less', side('needle-gauge', '22', { device: 'needle' }), 'flow')).verdict,
    ).toBe('contradicted');
  });

  it('is touched by the words of its own sentence alone', () => {
    const text = 'The walls are thick and the line is long. An 18 G is less than a 22 G.';
    const span = at(text, 'An 18 G is less than a 22 G.');
    for (const axis of ['bore', 'flow'] as const)
      expect(
        judged({ ...compare(gauge('18'), 'less', gauge('22'), axis), span } as Said, { text }).verdict,
      ).toBe('contradicted');
    const walled = 'A thick-walled 18 G is thinner than a 22 G.';
    const whole = { start: 0, end: walled.length };
    expect(
      judged({ ...compare(gauge('18'), 'less', gauge('22')), span: whole } as Said, { text: walled }).verdict,
    ).toBe('contradicted');
  });

  it('that is left open says why', () => {
    expect(judged(compare(gauge('18'), 'less', gauge('22'), 'other')).holds).toBe(
      'A size alone does not settle this.',
    );
  });

  it('of two ways to write one size shows them as written', () => {
    const said = judged(
      compare(side('usp', '0', { text: '0' }), 'more', side('usp', '1-0', { text: '1-0' })),
    );
    expect(said).toMatchObject({
      verdict: 'contradicted',
      says: 'Says 0 is thicker than 1-0.',
      holds: 'These are two ways to write one size, 0.',
    });
  });

  it('of tubes is about the inside', () => {
    const said = judged(compare(side('tube-id', '7'), 'more', side('tube-id', '8')));
    expect([said.verdict, said.says]).toEqual(['contradicted', 'Says 7 mm ID is wider inside than 8 mm ID.']);
  });

  it('is mended by the opposite word, unless the two are the same', () => {
    const text = 'An 18 G is thinner than a 22 G.';
    const word = at(text, 'thinner');
    const claim = { ...compare(gauge('18'), 'less', gauge('22')), word } as Said;
    expect(judged(claim, { text }).repair).toEqual({
      title: 'Write “thicker” instead of “thinner”',
      edit: { span: word, text: 'thicker' },
    });
    expect(judged(compare(gauge('18'), 'less', gauge('22')), { text }).repair).toBeUndefined();
    expect(judged({ ...claim, relation: 'same' } as Said, { text }).repair).toBeUndefined();
    expect(
      judged({ ...compare(gauge('18'), 'less', gauge('18')), word } as Said, { text }).repair,
    ).toBeUndefined();
  });

  const about = (
    axis: Axis,
    text: string,
    left = gauge('18'),
    right = gauge('22'),
  ): ComparisonClaim['kind'] | string =>
    judged({ ...compare(left, 'less', right, axis), span: { start: 0, end: text.length } } as Said, { text })
      .verdict;

  it.each([
    ['flow', 'An 18 G flows slower than a 22 G.', 'contradicted'],
    ['flow', 'An 18 G takes longer than a 22 G.', 'contradicted'],
    ['flow', 'A long 18 G flows slower than a 22 G.', 'cannot-tell'],
    ['flow', 'A long 18 G flows slower than a 22 G of the same length.', 'contradicted'],
    ['flow', 'A kinked 18 G flows slower than a 22 G.', 'cannot-tell'],
    ['bore', 'An 18 G is narrower than a 22 G.', 'contradicted'],
    ['bore', 'A thick-walled 18 G is narrower than a 22 G.', 'cannot-tell'],
    ['bore', 'A three-way 18 is narrower than a 22.', 'cannot-tell'],
    ['bore', 'A three-way 18 is narrower than a 2-way 22.', 'cannot-tell'],
    ['bore', 'A three-way 18 is narrower than a Three-way 22.', 'contradicted'],
    ['hole', 'An 18 G makes a smaller hole than a 22 G.', 'contradicted'],
    ['number', 'An 18 is lower than a 22.', 'cannot-tell'],
    ['other', 'An 18 G costs less than a 22 G.', 'cannot-tell'],
    ['strength', 'An 18 G is weaker than a 22 G.', 'cannot-tell'],
  ] as const)('of %s: %s %s', (axis, text, verdict) => {
    expect(about(axis, text)).toBe(verdict);
  });

  it('of strength holds for thread of one material', () => {
    const thread = (text: string, material?: string) => side('usp', text, material ? { material } : {});
    expect(about('strength', '', thread('2-0', 'silk'), thread('4-0', 'silk'))).toBe('contradicted');
    expect(about('strength', '', thread('2-0', 'silk'), thread('4-0', 'nylon'))).toBe('cannot-tell');
    expect(about('strength', '', side('usp', ['2-0', '3-0']), thread('4-0'))).toBe('cannot-tell');
    expect(about('flow', '', thread('2-0'), thread('4-0'))).toBe('cannot-tell');
  });

  it('of bore or flow stays inside one system and one kind of device', () => {
    const needle = side('needle-gauge', '18', { device: 'needle' });
    const cannula = side('needle-gauge', '22', { device: 'cannula' });
    expect(about('flow', '', needle, cannula)).toBe('cannot-tell');
    expect(about('hole', '', needle, cannula)).toBe('contradicted');
    expect(about('flow', '', needle, gauge('22'))).toBe('contradicted');
    expect(about('flow', '', gauge('18'), cannula)).toBe('contradicted');
    expect(about('bore', '', side('french', '14'), side('millimetre', '1'))).toBe('cannot-tell');
    expect(about('hole', '', side('french', '14'), side('millimetre', '1'))).toBe('contradicted');
    expect(about('outer', '', side('french', '14'), side('millimetre', '1'))).toBe('contradicted');
  });
});

describe('an order', () => {
  const order = (items: readonly Operand[], runs: 'up' | 'down', axis: Axis = 'outer'): Said => ({
    kind: 'order', items, runs, axis,
  }); // biome-ignore format: a value
  const gauges = (...texts: string[]) => texts.map(gauge);

  it.each([
    [gauges('22', '20', '18'), 'up', 'agrees'],
    [gauges('22', '20', '18'), 'down', 'contradicted'],
    [gauges('22', '18', '20'), 'up', 'contradicted'],
    [gauges('18', '20', '22'), 'down', 'agrees'],
    [gauges('18', '18', '22'), 'down', 'contradicted'],
    [[side('usp', '3'), side('usp', '4'), side('usp', '5')], 'up', 'cannot-tell'],
    [[side('usp', '3'), side('usp', '4'), side('usp', '2')], 'up', 'contradicted'],
    [[gauge('18'), side('french', '14')], 'up', 'cannot-tell'],
    [[gauge('18'), NOBODY], 'up', 'cannot-tell'],
  ] as const)('%o %s: %s', (items, runs, verdict) => {
    expect(judged(order(items, runs)).verdict).toBe(verdict);
  });

  it('says where it breaks', () => {
    expect(judged(order(gauges('22', '18', '20'), 'up'))).toMatchObject({
      says: 'Says these run from thinner to thicker: 22 G, 18 G, 20 G.',
      holds:
        '18 G is thicker than 20 G, so they do not stand in that order: a larger gauge number is thinner.',
    });
    expect(judged(order(gauges('18', '22', '20'), 'down')).holds).toMatch(/^22 G is thinner than 20 G,/);
    expect(judged(order(gauges('18', '18'), 'down')).holds).toMatch(/^18 G is the same as 18 G,/);
    expect(judged(order(gauges('18', '20'), 'down'))).toMatchObject({ holds: 'The order holds.' });
    expect(judged(order([side('needle-gauge', ['22', '20']), gauge('18')], 'down')).says).toContain(
      'from thicker to thinner: 22 G to 20 G, 18 G.',
    );
  });

  const placed = (text: string, words: readonly string[]) =>
    words.map((word) => side('needle-gauge', word.replace(/\D/g, ''), { span: at(text, word), text: word }));
  const mended = (text: string, words: readonly string[], runs: 'up' | 'down' = 'up') => {
    const edit = judged(order(placed(text, words), runs), { text }).repair?.edit;
    return edit && text.slice(0, edit.span.start) + edit.text + text.slice(edit.span.end);
  };

  it('of several systems says that it cannot be judged', () => {
    const mixed = judged(order([gauge('18'), gauge('16'), side('french', '14')], 'down'));
    expect([mixed.verdict, mixed.holds]).toEqual(['cannot-tell', 'Not every pair here can be compared.']);
  });

  it('names its sources and its rule', () => {
    const broken = judged(order(gauges('18', '20'), 'up'));
    expect(broken.source).not.toBe('');
    expect(broken.source).not.toBe('a larger gauge number is thinner');
    expect(broken.derivation[1]).toMatchObject({ label: 'rule', text: 'a larger gauge number is thinner' });
    expect(judged(order([side('tube-id', '7'), side('tube-id', '8')], 'down')).source).toBe(
      'a larger number is wider inside',
    );
  });

  it('is not mended where its sizes stand in another order in the text', () => {
    const text = 'A. 18 G, B. 22 G, C. 20 G. Thin to thick: A C B.';
    const [a, b, c] = placed(text, ['18 G', '22 G', '20 G']);
    const key = judged(order([a!, c!, b!], 'up'), { text });
    expect(key.verdict).toBe('contradicted');
    expect(key.repair).toBeUndefined();
  });

  it('is mended in words and with decimals', () => {
    const text = 'Thin to thick: eighteen gauge, twenty gauge.';
    const spoken = ['eighteen gauge', 'twenty gauge'].map((words, i) =>
      side('needle-gauge', i === 0 ? '18' : '20', { span: at(text, words), text: words }),
    );
    const repair = judged(order(spoken, 'up'), { text }).repair!;
    expect(repair.title).toBe('Put these sizes in the order the text announces');
    expect(repair.edit.text).toBe('twenty gauge, eighteen gauge');
    const mixed = 'Thin to thick: eighteen gauge, 20 G.';
    const [first, second] = ['eighteen gauge', '20 G'].map((words, i) =>
      side('needle-gauge', i === 0 ? '18' : '20', { span: at(mixed, words), text: words }),
    );
    expect(judged(order([first!, second!], 'up'), { text: mixed }).repair).toBeUndefined();
    const french = 'Thin to thick: 10 Fr, 8.5 Fr, 8.5 Fr.';
    const sizes = [
      side('french', '10', { span: { start: 15, end: 20 }, text: '10 Fr' }),
      side('french', '8.5', { span: { start: 22, end: 28 }, text: '8.5 Fr' }),
      side('french', '8.5', { span: { start: 30, end: 36 }, text: '8.5 Fr' }),
    ];
    expect(judged(order(sizes, 'up'), { text: french }).repair?.edit.text).toBe('8.5 Fr, 8.5 Fr, 10 Fr');
    const range = side('french', ['8', '9'], { span: { start: 22, end: 28 }, text: '8.5 Fr' });
    expect(judged(order([sizes[0]!, range], 'up'), { text: french }).repair).toBeUndefined();
  });

  it('is mended where all are written alike', () => {
    expect(mended('Thin to thick: 18 G, 22 G and 20 G.', ['18 G', '22 G', '20 G'])).toBe(
      'Thin to thick: 22 G, 20 G and 18 G.',
    );
    expect(mended('Thick to thin: 22 G, 18 G, 20 G.', ['22 G', '18 G', '20 G'], 'down')).toBe(
      'Thick to thin: 18 G, 20 G, 22 G.',
    );
    expect(mended('Thin to thick: 18, 22 and 20 G.', ['18', '22', '20 G'])).toBeUndefined();
    const text = 'Thin to thick: 18 G, 22 G.';
    const [first, second] = placed(text, ['18 G', '22 G']);
    const bare = { ...second!, mentions: [] };
    expect(judged(order([first!, bare], 'up'), { text }).repair).toBeUndefined();
    expect(judged(order([first!, second!], 'up'), { text }).repair).toBeDefined();
  });
});

describe('a range', () => {
  const range = (one: Operand, inside: boolean, low = side('french', '12'), high = side('french', '16')): Said => ({
    kind: 'range', size: one, low, high, inside,
  }); // biome-ignore format: a value

  it.each([
    ['14', true, 'agrees'],
    ['14', false, 'contradicted'],
    ['18', true, 'contradicted'],
    ['18', false, 'agrees'],
    ['10', true, 'contradicted'],
    ['12', true, 'agrees'],
    ['16', true, 'agrees'],
    [['14', '18'], true, 'cannot-tell'],
    [['10', '18'], true, 'contradicted'],
  ] as const)('%s Fr inside 12 to 16: %s is %s', (texts, inside, verdict) => {
    expect(judged(range(side('french', texts), inside)).verdict).toBe(verdict);
    expect(
      judged(range(side('french', texts), inside, side('french', '16'), side('french', '12'))).verdict,
    ).toBe(verdict);
  });

  it('is said in words', () => {
    expect(judged(range(side('french', '18'), true))).toMatchObject({
      says: 'Says 18 Fr is inside 12 Fr to 16 Fr.',
      holds: '18 Fr lies outside 12 Fr to 16 Fr.',
    });
    expect(judged(range(side('french', '14'), false))).toMatchObject({
      says: 'Says 14 Fr is outside 12 Fr to 16 Fr.',
      holds: '14 Fr lies inside 12 Fr to 16 Fr.',
    });
  });

  it('without an end or a size is not judged', () => {
    for (const claim of [
      range(NOBODY, true),
      range(side('french', '14'), true, NOBODY),
      range(side('french', '14'), true, side('french', '12'), NOBODY),
    ])
      expect(judged(claim)).toMatchObject({ verdict: 'cannot-tell', says: '' });
  });
});

describe('a limit', () => {
  const limit = (texts: string | readonly string[], side_: 'at-least' | 'at-most', strict = false, bound = gauge('18')): Said => ({
    kind: 'limit', size: side('needle-gauge', texts), bound, side: side_, strict,
  }); // biome-ignore format: a value

  it.each([
    ['16', 'at-least', false, 'agrees'],
    ['20', 'at-least', false, 'contradicted'],
    ['18', 'at-least', false, 'agrees'],
    ['18', 'at-least', true, 'cannot-tell'],
    ['16', 'at-most', false, 'contradicted'],
    ['20', 'at-most', true, 'agrees'],
    [['16', '20'], 'at-least', false, 'contradicted'],
    [['16', '18'], 'at-least', true, 'cannot-tell'],
  ] as const)('%s G, %s 18 G (strict: %s): %s', (texts, which, strict, verdict) => {
    expect(judged(limit(texts, which, strict)).verdict).toBe(verdict);
  });

  it('is said in words', () => {
    expect(judged(limit('20', 'at-least'))).toMatchObject({
      says: 'Says 20 G keeps to the limit “18 G or thicker”.',
      holds: '20 G is thinner than 18 G: a larger gauge number is thinner.',
    });
    expect(judged(limit('16', 'at-most', true)).says).toBe(
      'Says 16 G keeps to the limit “thinner than 18 G”.',
    );
    expect(judged(limit('18', 'at-most')).holds).toMatch(/^18 G is 18 G:/);
    expect(judged(limit(['16', '20'], 'at-least')).says).toContain('20 G');
  });

  it('without a bound or a size is not judged', () => {
    expect(judged(limit([], 'at-least')).verdict).toBe('cannot-tell');
    expect(judged(limit('16', 'at-least', false, NOBODY)).verdict).toBe('cannot-tell');
  });
});

describe('a direction', () => {
  const runs = (system: 'needle-gauge' | 'french' | 'usp' | 'wire-gauge' | 'ep-metric', number: 'up' | 'down', size: 'up' | 'down', zeros?: boolean): Said => ({
    kind: 'direction', system, number, axis: 'outer', size, ...(zeros === undefined ? {} : { zeros }),
  }); // biome-ignore format: a value

  it.each([
    ['needle-gauge', 'up', 'down', undefined, 'agrees', 'Says a larger gauge number is thinner.'],
    ['needle-gauge', 'up', 'up', undefined, 'contradicted', 'Says a larger gauge number is thicker.'],
    ['needle-gauge', 'down', 'up', undefined, 'agrees', 'Says a smaller gauge number is thicker.'],
    ['french', 'up', 'up', undefined, 'agrees', 'Says a larger French number is thicker.'],
    ['french', 'up', 'down', undefined, 'contradicted', 'Says a larger French number is thinner.'],
    ['ep-metric', 'up', 'up', undefined, 'agrees', 'Says a larger metric number is thicker.'],
    ['usp', 'up', 'down', true, 'agrees', 'Says more zeros are thinner.'],
    ['usp', 'down', 'down', true, 'contradicted', 'Says fewer zeros are thinner.'],
    ['usp', 'up', 'up', undefined, 'cannot-tell', 'Says a larger size number is thicker.'],
    ['wire-gauge', 'up', 'up', undefined, 'contradicted', 'Says a larger size number is thicker.'],
  ] as const)('of %s: number %s, size %s, zeros %s: %s', (system, number, size, zeros, verdict, says) => {
    expect(judged(runs(system, number, size, zeros))).toMatchObject({ verdict, says });
  });

  it('of what is no size is not judged', () => {
    for (const axis of ['number', 'other'] as const)
      expect(judged({ ...runs('french', 'up', 'down'), axis } as Said).verdict).toBe('cannot-tell');
  });

  it('names its rule, its standard and its sources', () => {
    expect(judged(runs('needle-gauge', 'up', 'up'))).toMatchObject({
      holds: 'With needle and cannula gauge, a larger gauge number is thinner.',
      source: 'ISO 9626',
      sources: ['ISO9626-scope'],
    });
    expect(judged(runs('usp', 'down', 'down', true))).toMatchObject({
      holds: 'With USP sizes, more zeros are thinner.',
      source: 'USP <861>',
    });
    expect(judged(runs('wire-gauge', 'up', 'up'))).toMatchObject({
      holds: 'With wire gauge, a larger gauge number is thinner.',
      source: 'by definition',
      sources: [],
    });
    expect(judged({ ...runs('french', 'up', 'down'), system: 'hegar' } as Said)).toMatchObject({
      holds: 'With Hegar dilators, a larger number is thicker.',
      source: 'by definition',
    });
  });

  it('is mended by the opposite word, in its capitals and with its article', () => {
    const mend = (text: string, word: string) =>
      judged({ ...runs('needle-gauge', 'up', 'up'), focus: at(text, word) } as Said, { text }).repair?.edit
        .text;
    expect(mend('The higher the gauge, the thicker.', 'thicker')).toBe('thinner');
    expect(mend('Thicker it is.', 'Thicker')).toBe('Thinner');
    expect(mend('a thicker one', 'thicker')).toBe('thinner');
    expect(mend('with an increase of gauge', 'increase')).toBeUndefined();
    expect(mend('it increases', 'increases')).toBe('decreases');
    expect(mend('no such word', 'such')).toBeUndefined();
  });
});

describe('the stance', () => {
  const wrong = compare(gauge('18'), 'less', gauge('22'));
  const right = compare(gauge('18'), 'more', gauge('22'));
  const open = compare(side('usp', '3'), 'more', side('usp', '4'));
  it.each([
    [wrong, 'asserted', 'contradicted'],
    [right, 'asserted', 'agrees'],
    [open, 'asserted', 'cannot-tell'],
    [wrong, 'denied', 'agrees'],
    [right, 'denied', 'contradicted'],
    [open, 'denied', 'cannot-tell'],
    [wrong, 'asked', 'cannot-tell'],
    [wrong, 'quoted', 'cannot-tell'],
    [right, 'hedged', 'cannot-tell'],
  ] as const)('%o %s: %s', (claim, stance, verdict) => {
    expect(judged(claim, { stance }).verdict).toBe(verdict);
  });

  it('of a denial is said, and mended by nobody', () => {
    const text = 'An 18 G is not thicker than a 22 G.';
    const denied = judged({ ...right, word: at(text, 'thicker') } as Said, { text, stance: 'denied' });
    expect(denied.says).toBe('Denied here: says 18 G is thicker than 22 G.');
    expect(denied.repair).toBeUndefined();
    expect(denied.derivation[0]!.text).toBe('Says 18 G is thicker than 22 G. (read by "by hand", denied)');
    expect(denied.derivation.at(-1)!.text).toBe('contradicted');
    expect(judged(open).derivation.at(-1)!.text).toBe('cannot tell');
  });
});
