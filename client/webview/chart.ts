/** The page of the size chart: one button a size, drawn to scale on one baseline, from thin to thick. */
import { chartSvg } from './draw.ts';
import type { FromChart, Row, ToChart } from './messages.ts';

declare function acquireVsCodeApi(): {
  postMessage(message: FromChart): void;
  getState(): unknown;
  setState(state: unknown): void;
};

const editor = acquireVsCodeApi();
const main = document.querySelector('main')!;
let shown: ToChart | undefined;
let query = String((editor.getState() as { query?: string } | undefined)?.query ?? '');

window.addEventListener('message', ({ data }: MessageEvent<ToChart>) => {
  shown = data;
  render(data);
});
editor.postMessage({ kind: 'ready' });

function render({ title, words, rows }: ToChart): void {
  const heading = make('h1', title);
  const search = make('input');
  search.type = 'search';
  search.value = query;
  search.placeholder = words.search;
  search.setAttribute('aria-label', words.search);
  search.addEventListener('input', () => {
    query = search.value;
    editor.setState({ query });
    fillList();
  });
  const save = make('button', words.save);
  save.className = 'plain';
  save.disabled = rows.length === 0;
  save.addEventListener('click', () => editor.postMessage({ kind: 'save', svg: chartSvg(found(), title) }));
  const bar = make('div');
  bar.className = 'bar';
  bar.append(search, save);
  const list = make('ul');
  list.id = 'sizes';
  list.addEventListener('keydown', walk);
  const hint = make('p', words.hint);
  const caution = make('p', words.caution);
  caution.className = 'caution';
  main.replaceChildren(heading, bar, hint, list, caution);
  fillList();
}

/** Rows that fit the search: every word must be in the label, the system, the device or the measure. */
function found(): Row[] {
  const asked = query.toLowerCase().split(/\s+/).filter(Boolean);
  const text = (row: Row): string =>
    `${row.label} ${row.label.replace(/\s/g, '')} ${row.system} ${row.device} ${row.measure}`.toLowerCase();
  return (shown?.rows ?? []).filter((row) => asked.every((word) => text(row).includes(word)));
}

function fillList(): void {
  const list = document.getElementById('sizes');
  if (list === null || shown === undefined) return;
  const rows = found();
  if (rows.length === 0) {
    list.replaceChildren(make('li', shown.rows.length === 0 ? shown.words.empty : shown.words.none));
    return;
  }
  const largest = Math.max(...rows.map((row) => row.max));
  list.replaceChildren(...rows.map((row) => item(row, largest)));
}

/** Largest circle, pixels. */
const LARGEST = 96;

function item(row: Row, largest: number): HTMLLIElement {
  const button = make('button');
  button.className = 'size';
  const detail = [row.device, row.measure, row.standard].filter(Boolean).join(', ');
  button.setAttribute('aria-label', `${row.label}: ${detail}. ${placesOf(row)}`);
  button.title = [detail, row.system, row.caution].filter(Boolean).join('\n');
  button.append(
    circle(row, LARGEST / largest),
    make('strong', row.label),
    make('span', row.measure),
    make('span', row.device),
    make('small', placesOf(row)),
  );
  button.addEventListener('click', () => {
    const place = row.places[0];
    if (place !== undefined) editor.postMessage({ kind: 'open', uri: place.uri, range: place.range });
  });
  const li = make('li');
  li.append(button);
  return li;
}

const placesOf = (row: Row): string =>
  (shown?.words.places ?? '{0}').replace('{0}', String(row.places.length));

const SVG = 'http://www.w3.org/2000/svg';

function circle(row: Row, scale: number): SVGElement {
  const svg = document.createElementNS(SVG, 'svg');
  svg.setAttribute('width', String(LARGEST + 4));
  svg.setAttribute('height', String(LARGEST + 4));
  svg.setAttribute('aria-hidden', 'true');
  for (const [diameter, name] of [
    [row.max, 'outer'],
    [row.min, 'inner'],
  ] as const) {
    const shape = document.createElementNS(SVG, 'circle');
    const radius = Math.max(0.5, (diameter * scale) / 2);
    shape.setAttribute('cx', String(LARGEST / 2 + 2));
    shape.setAttribute('cy', String(LARGEST + 2 - radius));
    shape.setAttribute('r', String(radius));
    shape.setAttribute('class', row.hollow ? `${name} hollow` : name);
    svg.append(shape);
  }
  return svg;
}

/** Arrow keys walk from size to size. */
function walk(event: KeyboardEvent): void {
  const step = { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 }[event.key];
  if (step === undefined) return;
  const all = [...document.querySelectorAll<HTMLButtonElement>('button.size')];
  const next = all[all.indexOf(document.activeElement as HTMLButtonElement) + step];
  if (next === undefined) return;
  next.focus();
  event.preventDefault();
}

function make<K extends keyof HTMLElementTagNameMap>(name: K, text?: string): HTMLElementTagNameMap[K] {
  const element = document.createElement(name);
  if (text !== undefined) element.textContent = text;
  return element;
}
