/** Circles and the scale bar, in the colours of the page. */
import type { Row } from './messages.ts';

const SVG = 'http://www.w3.org/2000/svg';

function shape(name: string, attributes: Readonly<Record<string, string | number>>): SVGElement {
  const element = document.createElementNS(SVG, name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, String(value));
  return element;
}

/** The size with its limits: the outer circle is the upper one. A circle below a pixel is drawn a pixel wide. */
export function circle({ min, max, hollow }: Row, pixels: number): SVGElement {
  const side = Math.ceil(Math.max(2, max * pixels)) + 4;
  const svg = shape('svg', { width: side, height: side, 'aria-hidden': 'true' });
  for (const [diameter, name] of [
    [max, 'outer'],
    [min, 'inner'],
  ] as const) {
    const radius = Math.max(0.5, (diameter * pixels) / 2);
    svg.append(
      shape('circle', {
        cx: side / 2,
        cy: side - 2 - radius,
        r: radius,
        class: hollow ? `${name} hollow` : name,
      }),
    );
  }
  return svg;
}

const STEPS = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20];
const SHORTEST = 40;

/** A bar of a round length: the first one that is long enough to see. */
export function scaleBar(pixels: number): SVGElement {
  const length = STEPS.find((step) => step * pixels >= SHORTEST) ?? 20;
  const width = length * pixels;
  const svg = shape('svg', { width: width + 80, height: 22, role: 'img', 'aria-label': `${length} mm` });
  const text = shape('text', { x: width + 12, y: 16, class: 'scale' });
  text.textContent = `${length} mm`;
  svg.append(shape('path', { d: `M2 6 V16 H${width + 2} V6`, class: 'scale' }), text);
  return svg;
}
