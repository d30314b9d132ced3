/** The chart as a picture of its own, to scale, legible on any ground: a light card with dark ink. */
import type { Row } from './messages.ts';

const COLUMN = 110;
const LARGEST = 96;
const ROW = LARGEST + 64;
const ACROSS = 8;

export function chartSvg(rows: readonly Row[], title: string): string {
  const largest = rows.reduce((most, row) => Math.max(most, row.max), 0);
  const across = Math.max(1, Math.min(ACROSS, rows.length));
  const width = across * COLUMN + 20;
  const height = 50 + Math.ceil(rows.length / across) * ROW;
  const cells = rows.map((row, index) => cell(row, index, across, LARGEST / largest));
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="sans-serif" font-size="12"><title>${escapeXml(title)}</title><rect width="100%" height="100%" fill="#ffffff"/><text x="10" y="24" font-size="15" fill="#1a1a1a">${escapeXml(title)}</text>${cells.join('')}</svg>`;
}

function cell(row: Row, index: number, across: number, scale: number): string {
  const x = 10 + (index % across) * COLUMN + COLUMN / 2;
  const base = 40 + Math.floor(index / across) * ROW + LARGEST;
  const radius = Math.max(0.5, (row.max * scale) / 2);
  const fill = row.hollow ? 'none' : '#cfd8dc';
  const lines = [row.label, row.measure, row.device].map(
    (text, line) =>
      `<text x="${x}" y="${base + 16 + line * 14}" text-anchor="middle" fill="#1a1a1a"${line === 0 ? ' font-weight="bold"' : ''}>${escapeXml(text)}</text>`,
  );
  return `<circle cx="${x}" cy="${base - radius}" r="${radius}" fill="${fill}" stroke="#1a1a1a"/>${lines.join('')}`;
}

const escapeXml = (text: string): string =>
  text.replace(
    /[<>&"]/g,
    (character) => ({ '<': '&lt;', '>': '&gt;', '&': '&amp;', '"': '&quot;' })[character]!,
  );
