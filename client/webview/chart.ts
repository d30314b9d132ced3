/** The page of the size chart: every size to one scale on one baseline, by system, from thin to thick. */
import { chartSvg } from './draw.ts';
import type { FromChart, Row, ToChart } from './messages.ts';
import { circle, scaleBar } from './shapes.ts';

interface Kept {
  readonly query: string;
  readonly zoom: number;
  /** One scale for every system; else each system has its own. */
  readonly together: boolean;
}

declare function acquireVsCodeApi(): {
  postMessage(message: FromChart): void;
  getState(): Partial<Kept> | undefined;
  setState(state: Kept): void;
};

const editor = acquireVsCodeApi();
const main = document.querySelector('main')!;
let shown: ToChart | undefined;
let kept: Kept = { query: '', zoom: 1, together: false, ...editor.getState() };

window.addEventListener('message', ({ data }: MessageEvent<ToChart>) => {
  shown = data;
  render(data);
});
editor.postMessage({ kind: 'ready' });

function keep(change: Partial<Kept>): void {
  kept = { ...kept, ...change };
  editor.setState(kept);
  fill();
}

function render({ title, words, rows }: ToChart): void {
  const save = make('button', words.save);
  save.className = 'plain';
  save.disabled = rows.length === 0;
  save.addEventListener('click', () => editor.postMessage({ kind: 'save', svg: chartSvg(found(), title) }));
  const bar = make('div');
  bar.className = 'bar';
  bar.append(searchBox(words.search), togetherBox(words.together), zoomBox(words.zoom), save);
  const list = make('div');
  list.id = 'sizes';
  list.addEventListener('keydown', walk);
  const caution = make('p', words.caution);
  caution.className = 'caution';
  main.replaceChildren(make('h1', title), bar, make('p', words.hint), list, caution);
  fill();
}

function searchBox(label: string): HTMLInputElement {
  const search = make('input');
  search.type = 'search';
  search.value = kept.query;
  search.placeholder = label;
  search.setAttribute('aria-label', label);
  search.addEventListener('input', () => keep({ query: search.value }));
  return search;
}

function zoomBox(label: string): HTMLLabelElement {
  const zoom = make('input');
  zoom.type = 'range';
  zoom.min = '0';
  zoom.max = '6';
  zoom.step = '0.5';
  zoom.value = String(Math.log2(kept.zoom));
  zoom.addEventListener('input', () => keep({ zoom: 2 ** Number(zoom.value) }));
  const box = make('label', label);
  box.append(zoom);
  return box;
}

function togetherBox(label: string): HTMLLabelElement {
  const together = make('input');
  together.type = 'checkbox';
  together.checked = kept.together;
  together.addEventListener('change', () => keep({ together: together.checked }));
  const box = make('label');
  box.append(together, label);
  return box;
}

/** Rows that fit the search: every word must be in the label, the system, the device or the measure. */
function found(): Row[] {
  const asked = kept.query.toLowerCase().split(/\s+/).filter(Boolean);
  const text = ({ label, system, device, measure }: Row): string =>
    ` ${label} ${label.replace(/\s/g, '')} ${system} ${device} ${measure}`
      .toLowerCase()
      .replace(/[(,]|-(?=\p{L})/gu, ' ');
  // What is asked for begins a word: "18 G" is no part of a guidewire of 0.018 in.
  return (shown?.rows ?? []).filter((row) => asked.every((word) => text(row).includes(` ${word}`)));
}

/** Circle of a size that three in four do not exceed, and of the largest, without zoom; pixels. */
const USUAL = 72;
const LARGEST = 300;

/** Pixels a millimetre: one odd large size must not make dots of all the others. */
function scaleOf(rows: readonly Row[]): number {
  const rising = rows.map((row) => row.max).sort((a, b) => a - b);
  const usual = rising[Math.floor((rising.length - 1) * 0.75)]!;
  return Math.min(USUAL / usual, LARGEST / rising.at(-1)!) * kept.zoom;
}

function fill(): void {
  const list = document.getElementById('sizes');
  if (list === null || shown === undefined) return;
  const rows = found();
  if (rows.length === 0) {
    list.replaceChildren(make('p', shown.rows.length === 0 ? shown.words.empty : shown.words.none));
    return;
  }
  const all = kept.together ? scaleOf(rows) : undefined;
  const systems = [...new Set(rows.map((row) => row.system))];
  list.replaceChildren(
    ...systems.map((system) => {
      const own = rows.filter((row) => row.system === system);
      return group(system, own, all ?? scaleOf(own));
    }),
  );
}

function group(system: string, rows: readonly Row[], pixels: number): HTMLElement {
  const section = make('section');
  const list = make('ul');
  list.append(...rows.map((row) => item(row, pixels)));
  section.append(make('h2', system.charAt(0).toUpperCase() + system.slice(1)), scaleBar(pixels), list);
  return section;
}

function item(row: Row, pixels: number): HTMLLIElement {
  const detail = [row.device, row.measure, row.standard].filter(Boolean).join(', ');
  const button = make('button');
  button.className = 'size';
  button.setAttribute('aria-label', `${row.label}: ${detail}. ${placesOf(row)}`);
  button.title = [detail, row.caution].filter(Boolean).join('\n');
  button.append(circle(row, pixels), make('strong', row.label), make('span', row.measure));
  if (row.device !== '') button.append(make('span', row.device));
  button.append(make('small', placesOf(row)));
  button.addEventListener('click', () => {
    const place = row.places[0];
    if (place !== undefined) editor.postMessage({ kind: 'open', uri: place.uri, range: place.range });
  });
  const li = make('li');
  li.append(button);
  return li;
}

function placesOf({ places }: Row): string {
  const words = shown!.words;
  return places.length === 1 ? words.place : words.places.replace('{0}', String(places.length));
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
