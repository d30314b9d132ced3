/** The documented exceptions to "the numbers decide". */
import { describe, expect, it } from 'vitest';
import { compareThickness, type Lens, type System } from '../../server/src/sizes/index.ts';
import { size } from './support.ts';

type Side = readonly [System, string, Lens?];
const compare = ([s, a, l]: Side, [t, b, m]: Side) => compareThickness(size(s, a), size(t, b), l, m).result;

const gut: Lens = { material: 'chromic-gut' };
const silk: Lens = { material: 'silk' };
const monofilament: Lens = { material: 'polydioxanone' };
const needle: Lens = { device: 'needle' };
const cannula: Lens = { device: 'cannula' };

describe('sutures', () => {
  // USP <861> as reproduced (European Pharmacopoeia comparison table; Japanese standard): 3 and 4 share metric 6.
  it('cannot tell 3 from 4, save on gut, whose table has a row for each', () => {
    expect(compare(['usp', '3'], ['usp', '4'])).toBe('cannot-tell');
    expect(compare(['usp', '3', silk], ['usp', '4', silk])).toBe('cannot-tell');
    expect(compare(['usp', '3', gut], ['usp', '4', gut])).toBe('thinner');
  });
  // Book of Style for Medical Transcription, 3rd ed., p. 251: 0 and 1-0 are one size.
  it('holds 0, 1-0 and 1/0 for one size', () => {
    expect(compare(['usp', '0'], ['usp', '1-0'])).toBe('same');
    expect(compare(['usp', '1/0'], ['usp', '0'])).toBe('same');
  });
  // Sizes of closed series that no table has still run by their numbers: a row shared is a row that both have.
  it('goes by the numbers where a table has no row', () => {
    expect(compare(['usp', '3'], ['usp', '11'])).toBe('thinner');
    expect(compare(['usp', '11'], ['usp', '3'])).toBe('thicker');
    expect(compare(['usp', '11'], ['usp', '12'])).toBe('thinner');
  });
  // Learning module on needle and thread; USP suture size chart (collagen): gut of a size is one step thicker.
  it('sets gut against synthetic by diameter', () => {
    expect(compare(['usp', '3-0', gut], ['usp', '3-0', silk])).toBe('thicker');
    expect(compare(['usp', '3-0', gut], ['usp', '2-0', silk])).toBe('cannot-tell');
    expect(compare(['usp', '4-0', gut], ['usp', '2-0', silk])).toBe('thinner');
    expect(compare(['usp', '4-0', silk], ['usp', '4-0', gut])).toBe('thinner');
  });
  it('asks numbers and diameters to agree when one material is not said', () => {
    expect(compare(['usp', '3-0', gut], ['usp', '3-0'])).toBe('cannot-tell');
    expect(compare(['usp', '3-0', gut], ['usp', '4-0'])).toBe('thicker');
    expect(compare(['usp', '4-0'], ['usp', '3-0', gut])).toBe('thinner');
    expect(compare(['usp', '3-0'], ['usp', '3-0', gut])).toBe('cannot-tell');
  });
  // European Pharmacopoeia comparison table; veterinary note on catgut and synthetic absorbables: "USP except for diameter".
  it('does not tell an absorbable monofilament from the next size of another thread', () => {
    expect(compare(['usp', '3-0', monofilament], ['usp', '2-0', silk])).toBe('cannot-tell');
    expect(compare(['usp', '4-0', monofilament], ['usp', '2-0', silk])).toBe('thinner');
    expect(compare(['usp', '3-0', monofilament], ['usp', '2-0', monofilament])).toBe('thinner');
    expect(compare(['usp', '3-0', monofilament], ['usp', '2-0'])).toBe('thinner');
    expect(compare(['usp', '3-0', monofilament], ['usp', '3-0', silk])).toBe('same');
  });
  // Encyclopedia excerpt on suture classification, 1997: ePTFE goes by its own numbers.
  it('leaves ePTFE against others open', () => {
    expect(compare(['usp', '3-0', { material: 'eptfe' }], ['usp', '2-0', silk])).toBe('cannot-tell');
    expect(compare(['usp', '3-0', { material: 'eptfe' }], ['usp', '2-0', { material: 'eptfe' }])).toBe(
      'thinner',
    );
  });
  // European Pharmacopoeia comparison table: 2-0 synthetic and 3-0 gut are both metric 3.
  it('holds a USP size and the metric number of its row for the same', () => {
    expect(compare(['usp', '2-0'], ['ep-metric', '3'])).toBe('same');
    expect(compare(['ep-metric', '3'], ['usp', '3-0', gut])).toBe('same');
    expect(compare(['usp', '2-0'], ['ep-metric', '2'])).toBe('thicker');
    expect(compare(['usp', '3-0', monofilament], ['ep-metric', '2'])).toBe('cannot-tell');
  });
});

describe('gauges', () => {
  // Japan, notice of October 2006: IV catheters and needles have a table each.
  it('sets a needle against an IV catheter by diameter', () => {
    expect(compare(['needle-gauge', '18', needle], ['needle-gauge', '20', cannula])).toBe('thicker');
    expect(compare(['needle-gauge', '18', needle], ['needle-gauge', '18', cannula])).toBe('cannot-tell');
    expect(compare(['needle-gauge', '22', needle], ['needle-gauge', '24', cannula])).toBe('cannot-tell');
  });
  it('takes a thing not said for the thing it is set against', () => {
    expect(compare(['needle-gauge', '22', needle], ['needle-gauge', '23'])).toBe('thicker');
    expect(compare(['needle-gauge', '22'], ['needle-gauge', '20', cannula])).toBe('thinner');
    // Both lists together give 23 and 24 diameters that overlap; the list of the thing that is said does not.
    expect(compare(['needle-gauge', '23', needle], ['needle-gauge', '24'])).toBe('thicker');
    expect(compare(['needle-gauge', '24'], ['needle-gauge', '23', needle])).toBe('thinner');
    expect(compare(['needle-gauge', '26', cannula], ['needle-gauge', '25'])).toBe('thinner');
    expect(compare(['needle-gauge', '25'], ['needle-gauge', '26', cannula])).toBe('thicker');
    expect(compare(['needle-gauge', '26'], ['needle-gauge', '27', { device: 'steel-wire' }])).toBe('thicker');
    expect(compare(['needle-gauge', '22', { device: 'winged-set' }], ['needle-gauge', '22', needle])).toBe(
      'same',
    );
  });
  // Am J Vet Res 2025, doi:10.2460/ajvr.25.01.0007: the scale of a steel wire is not told by its number.
  it('cannot set a wire gauge against millimetres between the scales', () => {
    expect(compare(['wire-gauge', '18'], ['millimetre', '1.1'])).toBe('cannot-tell');
    expect(compare(['wire-gauge', '18'], ['millimetre', '1.3'])).toBe('thinner');
    expect(compare(['needle-gauge', '18', { device: 'k-wire' }], ['needle-gauge', '18', needle])).toBe(
      'cannot-tell',
    );
  });
});

describe('French', () => {
  // Textbook chapter on catheter materials; Procedure guide: a sheath's French is the catheter it accepts.
  it('does not set a sheath against a catheter', () => {
    expect(compare(['french', '6', { device: 'sheath' }], ['french', '7', { device: 'catheter' }])).toBe(
      'cannot-tell',
    );
    expect(compare(['french', '6', { device: 'sheath' }], ['french', '6'])).toBe('cannot-tell');
    expect(compare(['french', '6', { device: 'sheath' }], ['french', '7', { device: 'sheath' }])).toBe(
      'thinner',
    );
  });
  it('does not set a guiding catheter against another catheter: texts differ', () => {
    expect(compare(['french', '6', { device: 'guiding-catheter' }], ['french', '7'])).toBe('cannot-tell');
    expect(
      compare(
        ['french', '6', { device: 'guiding-catheter' }],
        ['french', '7', { device: 'guiding-catheter' }],
      ),
    ).toBe('thinner');
  });
  it('sets French against lengths and Hegar numbers', () => {
    expect(compare(['french', '6'], ['millimetre', '2'])).toBe('same');
    expect(compare(['french', '24'], ['hegar', '8'])).toBe('same');
    expect(compare(['french', '14'], ['millimetre', '5'])).toBe('thinner');
    expect(compare(['french', '14'], ['millimetre', '4.7'])).toBe('cannot-tell');
  });
});

it('cannot tell the outside of a tube sized by its bore', () => {
  expect(compare(['tube-id', '7.5'], ['millimetre', '7.5'])).toBe('cannot-tell');
  expect(compareThickness(size('french', '30'), size('tube-id', '7')).because).toContain('7 mm ID');
});
