/**
 * French and inch against the Unified Code for Units of Measure, read through the National Library of Medicine's
 * converter (package @lhncbc/ucum-lhc): 1 [Ch] is 1 mm/3, 1 [in_i] is 25.4 mm.
 */
import { UcumLhcUtils } from '@lhncbc/ucum-lhc';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { convert } from '../../server/src/sizes/index.ts';
import { outer, sizeOf } from './support.ts';

const ucum = UcumLhcUtils.getInstance();
function inMm(unit: string, value: number): number {
  const answer = ucum.convertUnitTo(unit, value, 'mm');
  if (answer.status !== 'succeeded' || answer.toVal === null) throw new Error(answer.msg.join());
  return answer.toVal;
}

it('reads every French size as UCUM reads [Ch]', () => {
  for (let french = 1; french <= 50; french++) {
    expect(outer('french', french).nominal).toBeCloseTo(inMm('[Ch]', french), 10);
  }
});

it.each(['inch', 'wire-inch'] as const)('reads every %s as UCUM reads [in_i]', (system) => {
  fc.assert(
    fc.property(sizeOf(system), ({ value }) => {
      expect(outer(system, value).nominal).toBeCloseTo(inMm('[in_i]', value), 10);
    }),
  );
});

it('says millimetres in French and inches as UCUM does', () => {
  fc.assert(
    fc.property(sizeOf('millimetre'), (size) => {
      const said = new Map(convert(size).map((c) => [c.to, c.value]));
      expect(inMm('[Ch]', said.get('french')!)).toBeCloseTo(size.value, 9);
      expect(inMm('[in_i]', said.get('inch')!)).toBeCloseTo(size.value, 9);
    }),
  );
});
