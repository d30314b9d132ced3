/** The picture of sizes: to scale, legible, safe with any caption. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawSizes, escapeXml, outerDiameter } from '../../server/src/sizes/index.ts';
import { CARD, INK, OTHER, STRESSED } from '../../server/src/sizes/picture.ts';
import { anyLens, anySize, size, sizeOf } from './support.ts';

const radii = (svg: string) =>
  [...svg.matchAll(/<circle [^>]*r="([\d.]+)"/g)].map((match) => Number(match[1]));
const solid = (svg: string) =>
  [...svg.matchAll(/<circle [^>]*r="([\d.]+)" fill="#/g)].map((match) => Number(match[1]));

describe('to scale', () => {
  it('draws 6 Fr three times as wide as 2 Fr, resting on one line', () => {
    const { svg } = drawSizes([{ size: size('french', 2) }, { size: size('french', 6) }])!;
    const [small, large] = solid(svg);
    expect(large! / small!).toBeCloseTo(3, 1);
    const feet = [...svg.matchAll(/cy="([\d.]+)" r="([\d.]+)"/g)].map((m) => Number(m[1]) + Number(m[2]));
    for (const foot of feet) expect(foot).toBeCloseTo(feet[0]!, 2);
  });

  it('keeps the ratio of any two lengths that are wide enough to be seen', () => {
    fc.assert(
      fc.property(sizeOf('millimetre'), sizeOf('millimetre'), (a, b) => {
        fc.pre(Math.max(a.value, b.value) / Math.min(a.value, b.value) < 30);
        const [x, y] = solid(drawSizes([{ size: a }, { size: b }])!.svg);
        expect(x! / y!).toBeCloseTo(a.value / b.value, 1);
      }),
    );
  });

  it('draws the scale bar in the same scale', () => {
    const { svg } = drawSizes([{ size: size('millimetre', 10) }])!;
    const [, from, to] = /<path d="M(\d+) \d+V\d+H([\d.]+)V/.exec(svg)!.map(Number);
    const mm = Number(/>([\d.]+) mm</.exec(svg.slice(svg.indexOf('<path')))![1]);
    expect((to! - from!) / mm).toBeCloseTo((solid(svg)[0]! * 2) / 10, 2);
  });

  it.each([
    [0.0003, 0.0002],
    [0.9, 0.5],
    [1, 1],
    [2, 2],
    [5, 5],
    [4.9, 2],
    [30, 20],
    [350, 100],
  ])('beside %d mm stands a bar of %d mm, no wider than the size', (widest, bar) => {
    const { svg } = drawSizes([{ size: size('millimetre', widest) }])!;
    const [, from, to] = /<path d="M(\d+) \d+V\d+H([\d.]+)V/.exec(svg)!.map(Number);
    expect(/>([\d.]+) mm/.exec(svg.slice(svg.indexOf('<path')))![1]).toBe(String(bar));
    expect(to! - from!).toBeLessThanOrEqual(72);
    expect((to! - from!) / 72).toBeCloseTo(bar / widest, 3);
  });

  it('says so when a thread is drawn wider to be seen', () => {
    const thin = drawSizes([{ size: size('usp', '10-0') }, { size: size('french', 30) }])!;
    expect(thin.svg).toContain('drawn wider');
    expect(solid(thin.svg)[0]).toBe(0.5);
    expect(drawSizes([{ size: size('usp', '2-0') }])!.svg).not.toContain('drawn wider');
  });

  it('draws a dashed ring where the greatest diameter can be told from the least', () => {
    expect(radii(drawSizes([{ size: size('usp', '1') }])!.svg)).toHaveLength(2);
    expect(radii(drawSizes([{ size: size('millimetre', '1') }])!.svg)).toHaveLength(1);
  });

  it('draws a hole for a tube or a sheath, whose size is its inside', () => {
    const { svg, alternative } = drawSizes([{ size: size('tube-id', '7.5') }])!;
    expect(solid(svg)).toEqual([]);
    expect(radii(svg)).toHaveLength(1);
    expect(alternative).toBe('To scale: 7.5 mm ID 7.5 mm inside');
  });
});

it('draws nothing without a diameter', () => {
  expect(drawSizes([])).toBeUndefined();
  expect(drawSizes([{ size: size('french', 6), lens: { device: 'guiding-catheter' } }])).toBeUndefined();
  const { alternative } = drawSizes([
    { size: size('french', 6), lens: { device: 'guiding-catheter' } },
    { size: size('french', 6) },
  ])!;
  expect(alternative).toBe('To scale: 6 Fr 2 mm');
});

describe('legible', () => {
  /** Relative luminance and contrast ratio as WCAG 2.2 defines them. */
  const luminance = (hex: string) => {
    const [r, g, b] = [1, 3, 5].map((at) => {
      const c = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
      return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
    }) as [number, number, number];
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const contrast = (a: string, b: string) => {
    const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
    return (high + 0.05) / (low + 0.05);
  };
  // WCAG 2.2, 1.4.6 (text 7:1) and 1.4.11 (graphics 3:1), on its own card and so on any background.
  it('has text of 7:1 and shapes of 3:1 on its own card', () => {
    expect(contrast(INK, CARD)).toBeGreaterThanOrEqual(7);
    expect(contrast(STRESSED, CARD)).toBeGreaterThanOrEqual(3);
    expect(contrast(OTHER, CARD)).toBeGreaterThanOrEqual(3);
    expect(drawSizes([{ size: size('french', 6) }])!.svg).toMatch(new RegExp(`<rect [^>]*fill="${CARD}"`));
  });
  // WCAG 2.2, 1.4.1: not by colour alone.
  it('makes the stressed size bold as well', () => {
    const { svg } = drawSizes([{ size: size('french', 6) }, { size: size('french', 8), stressed: true }])!;
    expect(svg.match(/font-weight="bold">[^<]*/g)).toEqual(['font-weight="bold">8 Fr']);
    expect(svg).toContain(`fill="${STRESSED}"`);
  });
  it('keeps everything inside its card', () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ size: anySize, lens: anyLens }), { minLength: 1, maxLength: 6 }),
        (items) => {
          const drawn = drawSizes(items);
          if (!drawn) return;
          for (const match of drawn.svg.matchAll(/cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)"/g)) {
            const [x, y, r] = match.slice(1).map(Number) as [number, number, number];
            expect(x - r).toBeGreaterThan(0);
            expect(y - r).toBeGreaterThan(0);
            expect(x + r).toBeLessThan(drawn.width);
            expect(y + r).toBeLessThan(drawn.height);
          }
          expect(drawn.svg).not.toMatch(/NaN|Infinity|undefined/);
        },
      ),
    );
  });
});

describe('layout', () => {
  const wide = { size: size('french', 6), caption: 'a caption much wider than its circle' };
  const drawn = drawSizes([wide, { size: size('usp', '10-0') }, { size: size('french', 30) }])!;
  const texts = [...drawn.svg.matchAll(/<text x="([\d.]+)" y="([\d.]+)"[^>]*>([^<]*)/g)].map((m) => ({
    x: Number(m[1]),
    y: Number(m[2]),
    half: (m[3]!.length * 7) / 2,
  }));

  it('keeps captions apart and on the card', () => {
    const captions = texts.filter((t) => t.y === texts[0]!.y);
    expect(captions).toHaveLength(3);
    captions.slice(1).forEach((text, i) => {
      expect(text.x - text.half).toBeGreaterThan(captions[i]!.x + captions[i]!.half);
    });
    const last = captions.at(-1)!;
    expect(last.x + last.half).toBeLessThan(drawn.width);
    expect(captions[0]!.x - captions[0]!.half).toBeGreaterThan(0);
    expect(drawn.width).toBeLessThan(600);
  });

  it('puts captions under circles, measures under captions, the bar under all', () => {
    const feet = [...drawn.svg.matchAll(/cy="([\d.]+)" r="([\d.]+)"/g)].map(
      (m) => Number(m[1]) + Number(m[2]),
    );
    const rows = [...new Set(texts.map((t) => t.y))];
    expect(rows).toHaveLength(3);
    expect(rows[0]!).toBeGreaterThan(Math.max(...feet) + 10);
    expect(rows[1]! - rows[0]!).toBe(15);
    expect(rows[2]!).toBeGreaterThan(rows[1]!);
    expect(rows[2]!).toBeLessThan(drawn.height);
  });

  it('leaves room for the line under a narrow picture', () => {
    const narrow = drawSizes([{ size: size('millimetre', 1) }])!;
    expect(narrow.width).toBe(20 + 72 + 63);
    const thin = drawSizes([{ size: size('usp', '12-0') }, { size: size('millimetre', 1) }])!;
    expect(thin.width).toBe(20 + 72 + 46 * 7);
    expect(narrow.svg).toContain(
      `<rect x="0.5" y="0.5" width="${narrow.width - 1}" height="${narrow.height - 1}"`,
    );
  });

  it('draws the longest round bar that fits, its ends upward, its length beside it', () => {
    const { svg, height } = drawSizes([{ size: size('millimetre', 1) }])!;
    const y = height - 10;
    expect(svg).toContain(`<path d="M10 ${y - 6}V${y}H82V${y - 6}"`);
    expect(svg).toContain(`<text x="88" y="${y}">1 mm</text>`);
    expect(drawSizes([{ size: size('millimetre', '1.9') }])!.svg).toContain('>1 mm<');
    expect(drawSizes([{ size: size('millimetre', '0.9') }])!.svg).toContain('>0.5 mm<');
    expect(drawSizes([{ size: size('millimetre', 500) }])!.svg).toContain('>100 mm<');
  });
});

describe('safe', () => {
  it('escapes a hostile caption', () => {
    const caption = '</text><script>alert("1")</script>&\'\u0000\ud800';
    const { svg } = drawSizes([{ size: size('french', 6), caption }])!;
    expect(svg).not.toMatch(/<script|\u0000|\ud800(?![\udc00-\udfff])/);
    expect(svg).toContain(
      '&lt;/text&gt;&lt;script&gt;alert(&quot;1&quot;)&lt;/script&gt;&amp;&#39;\ufffd\ufffd',
    );
  });
  it('never lets markup or a control character through', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const safe = escapeXml(text);
        expect(safe).not.toMatch(/[<>"']|&(?!(?:amp|lt|gt|quot|#39);)/);
        expect(safe).not.toMatch(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Surrogate}/u);
      }),
    );
  });
  it('balances its tags', () => {
    const { svg, alternative } = drawSizes([
      { size: size('usp', '2-0') },
      { size: size('usp', '0'), stressed: true },
    ])!;
    const open: string[] = [];
    for (const [, close, name, self] of svg.matchAll(/<(\/?)([a-z]+)[^>]*?(\/?)>/g)) {
      if (close) expect(open.pop()).toBe(name);
      else if (!self) open.push(name!);
    }
    expect(open).toEqual([]);
    expect(svg).toContain(`<title>${alternative}</title>`);
    expect(outerDiameter(size('usp', '2-0'))).toBeDefined();
  });
});

// Looked at and found good: a thread too fine to be seen, a range stressed between others, a tube drawn as a hole.
it('looks as it did', () => {
  const { svg } = drawSizes([
    { size: size('usp', '10-0') },
    { size: size('needle-gauge', '14'), lens: { device: 'cannula' }, stressed: true },
    { size: size('tube-id', '4') },
  ])!;
  expect(svg.replace(/></g, '>\n<').split('\n')).toEqual([
    '<svg xmlns="http://www.w3.org/2000/svg" width="414" height="147" viewBox="0 0 414 147" role="img">',
    '<title>To scale: 10-0 0.02–0.029 mm, 14 G 1.85–2.25 mm, 4 mm ID 4 mm inside</title>',
    '<rect x="0.5" y="0.5" width="413" height="146" rx="6" fill="#ffffff" stroke="#1a1a1a"/>',
    '<g font-family="sans-serif" font-size="12" fill="#1a1a1a">',
    '<g>',
    '<circle cx="55.5" cy="81.5" r="0.5" fill="#6b6b6b"/>',
    '<text x="55.5" y="100" text-anchor="middle">10-0</text>',
    '<text x="55.5" y="115" text-anchor="middle">0.02–0.029 mm</text>',
    '</g>',
    '<g>',
    '<circle cx="157" cy="61.759" r="20.241" fill="none" stroke="#0b5394" stroke-dasharray="3 2"/>',
    '<circle cx="157" cy="65.35" r="16.65" fill="#0b5394"/>',
    '<text x="157" y="100" text-anchor="middle" font-weight="bold">14 G</text>',
    '<text x="157" y="115" text-anchor="middle">1.85–2.25 mm</text>',
    '</g>',
    '<g>',
    '<circle cx="251.5" cy="46" r="36" fill="none" stroke="#6b6b6b" stroke-width="2"/>',
    '<text x="251.5" y="100" text-anchor="middle">4 mm ID</text>',
    '<text x="251.5" y="115" text-anchor="middle">4 mm inside</text>',
    '</g>',
    '<path d="M10 131V137H46V131" fill="none" stroke="#1a1a1a"/>',
    '<text x="52" y="137">2 mm; the finest is drawn wider to be seen</text>',
    '</g>',
    '</svg>',
  ]);
});
