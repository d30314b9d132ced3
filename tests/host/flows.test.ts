/** What an author does in a real VS Code workbench, one flow a test, each with its screenshot. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import {
  answerInput,
  editorText,
  goTo,
  hoverHere,
  openBrowser,
  openNote,
  placeOf,
  runCommand,
  shot,
  takeFix,
  webview,
} from './browser.ts';
import { startWorkbench, vsixPath, type Workbench } from './workbench.ts';

const WRONG = 'A 16 G cannula is thinner than a 20 G cannula.\n';

const NOTES: Readonly<Record<string, string>> = {
  'a-fix.md': `# One\n\n${WRONG}`,
  'b-all.md': `# All\n\n${WRONG}\nA 14 Fr catheter is wider than a 16 Fr catheter.\n`,
  'c-purpose.md': `# On purpose\n\n${WRONG}`,
  'd-table.md': '# Table\n\n',
  'e-stale.md':
    '# Stale\n\n<!-- sizes table: french 12 14 -->\n\n| French |\n| --- |\n| 9 Fr |\n\n<!-- end of sizes -->\n',
  'f-preview.md':
    '# Preview\n\nClose with 2-0 silk, then a 14 Fr catheter.\n\n<!-- sizes chart: french 6 12 18 24 -->\n',
  'g-complete.md': '# Complete\n\nA 14 Fr catheter, or an 8\n',
  'h-save.md': `# Save\n\n${WRONG}`,
  'k-kill.md': `# Kill\n\n${WRONG}`,
  'j-rename.md': '# Rename\n\nTake a 16 G cannula.\n',
  'i-unclear.md': '# Unclear\n\nPass me a 2 silk suture.\n',
};

let workbench: Workbench;
let page: Page;
let context: BrowserContext;

beforeAll(async () => {
  workbench = await startWorkbench({
    vsix: vsixPath(),
    notes: NOTES,
    settings: { 'files.autoSave': 'off', 'editor.wordBasedSuggestions': 'off' },
  });
  ({ page, context } = await openBrowser(workbench.url));
});

afterAll(async () => {
  await context?.close();
  workbench?.stop();
});

beforeEach(async () => {
  await page.keyboard.press('Escape');
  await closeAll();
});

async function closeAll(): Promise<void> {
  await runCommand(page, 'View: Close All Editors');
  const discard = page.getByRole('button', { name: "Don't Save" });
  if (await discard.isVisible().catch(() => false)) await discard.click();
  await page
    .locator('.tab')
    .first()
    .waitFor({ state: 'detached', timeout: 5000 })
    .catch(() => undefined);
}

afterEach(async ({ task }) => {
  if (task.result?.state === 'fail') await shot(page, `failed-${task.name.replace(/\W+/g, '-')}`);
});

const onDisk = (name: string): string => readFileSync(join(workbench.folder, name), 'utf8');

async function cursorOn(name: string, words: string): Promise<void> {
  await openNote(page, name);
  const { line, column } = placeOf(onDisk(name), words);
  await goTo(page, line, column + 1);
}

/** The browser keeps the settings it began with, so it begins again. */
async function withSettings(settings: Readonly<Record<string, unknown>>): Promise<void> {
  workbench.settings(settings);
  await closeAll(); // What is open would be restored, and come in front of what the test opens.
  await page.reload();
  await page.locator('.monaco-workbench .explorer-viewlet').first().waitFor();
}

const squiggle = () => page.locator('.squiggly-warning, .squiggly-error, .squiggly-info').first();

async function save(): Promise<void> {
  await page.keyboard.press('Control+S');
}

test('a quick fix mends the comparison', async () => {
  await cursorOn('a-fix.md', 'thinner');
  await squiggle().waitFor();
  await takeFix(page, 'Write “thicker”', 'fixes');
  await expect.poll(() => editorText(page)).toContain('is thicker than');
  await save();
  await expect.poll(() => onDisk('a-fix.md')).toContain('16 G cannula is thicker than a 20 G');
});

test('every safe finding is mended by one command', async () => {
  await openNote(page, 'b-all.md');
  await squiggle().waitFor();
  await runCommand(page, 'Mend Every Size');
  await expect.poll(() => editorText(page)).toContain('is narrower than');
  await shot(page, 'mend-all');
  expect(await editorText(page)).toContain('is thicker than');
});

test('an error is left in on purpose, with a reason', async () => {
  await cursorOn('c-purpose.md', 'thinner');
  await squiggle().waitFor();
  await takeFix(page, 'Leave this error in');
  await page.locator('.quick-input-widget input').first().waitFor();
  await shot(page, 'reason');
  await answerInput(page, 'find-the-error exercise');
  await expect.poll(() => editorText(page)).toContain('wrong on purpose: find-the-error exercise');
  await squiggle().waitFor({ state: 'detached' });
});

test('a reading is chosen for an unclear number', async () => {
  await cursorOn('i-unclear.md', '2 silk');
  await squiggle().waitFor();
  await takeFix(page, 'Write “2-0”', 'readings');
  await expect.poll(() => editorText(page)).toContain('Pass me a 2-0 silk suture');
});

test('a table is inserted by command', async () => {
  await openNote(page, 'd-table.md');
  await goTo(page, 3, 1);
  await runCommand(page, 'Insert a Table of Sizes');
  await answerInput(page, 'cannula');
  await page.getByText('Sizes to show, separated').first().waitFor();
  await answerInput(page, '14 16 18 20 22');
  await expect.poll(() => editorText(page)).toContain('| 18 G |');
  await shot(page, 'table');
  expect(await editorText(page)).toContain('<!-- sizes table: cannula 14 16 18 20 22 -->');
});

test('a table changed by hand is brought up to date', async () => {
  await cursorOn('e-stale.md', 'sizes table');
  await squiggle().waitFor();
  await takeFix(page, 'Bring the table up to date');
  await expect.poll(() => editorText(page)).toContain('| 14 Fr | 4.67 mm |');
});

test('the size chart shows, searches and leads to the note', async () => {
  await openNote(page, '01-suture-sizes-lecture.md');
  await squiggle().waitFor();
  await runCommand(page, 'Open the Size Chart of the Course');
  const chart = webview(page);
  await chart.locator('button.size').first().waitFor();
  const all = await chart.locator('button.size').count();
  await shot(page, 'chart');
  await chart.locator('input[type=search]').fill('18 G');
  await expect.poll(() => chart.locator('button.size').count()).toBeLessThan(all);
  await shot(page, 'chart-search');
  await chart.locator('button.size').first().press('Enter');
  await page.locator('.tab.active', { hasText: '.md' }).first().waitFor();
});

test('the preview has tooltips and draws the chart', async () => {
  await openNote(page, 'f-preview.md');
  await cursorOn('f-preview.md', 'sizes chart');
  await takeFix(page, 'Write the chart here');
  await expect.poll(() => editorText(page)).toContain('<svg');
  await runCommand(page, 'Markdown: Open Preview');
  const preview = webview(page);
  const size = preview.locator('.sizewright-size', { hasText: '2-0' });
  await size.waitFor();
  expect(await size.getAttribute('title')).toContain('0.3–0.349 mm');
  expect((await preview.locator('svg[role=img]').boundingBox())?.width).toBeGreaterThan(50);
  await shot(page, 'preview');
});

test('units are offered after a number', async () => {
  await openNote(page, 'g-complete.md');
  await goTo(page, 3, 26);
  await page.keyboard.press('Control+Space');
  const row = page.locator('.suggest-widget .monaco-list-row').first();
  await row.waitFor();
  await shot(page, 'completion');
  expect(await row.textContent()).toContain('8 Fr');
  await page.keyboard.press('Enter');
  await expect.poll(() => editorText(page)).toContain('or an 8 Fr');
});

test('a rename to no size is refused, and says why', async () => {
  await cursorOn('j-rename.md', '16 G');
  await page.keyboard.press('F2');
  const box = page.locator('.rename-box input').first();
  await box.waitFor();
  await box.fill('blue');
  await page.keyboard.press('Enter');
  await page.getByText('is not a size like 16 G').first().waitFor();
  await page.waitForTimeout(600);
  await shot(page, 'rename-refused');
});

test('a size is found in every note of the course', async () => {
  await page.keyboard.press('Control+T');
  const input = page.locator('.quick-input-widget input').first();
  await input.fill('#18 G');
  const rows = page.locator('.quick-input-list .monaco-list-row', { hasText: '18 G' });
  await expect.poll(() => rows.count(), { timeout: 20_000 }).toBeGreaterThan(1);
  await shot(page, 'symbols');
  await page.keyboard.press('Escape');
});

test('the whole course is in the Problems panel', async () => {
  await openNote(page, '00-welcome.md');
  await runCommand(page, 'Problems: Focus on Problems View');
  const count = page.locator('#status\\.problems a').first();
  const warnings = async (): Promise<number> =>
    Number(/Warnings: (\d+)/.exec((await count.getAttribute('aria-label')) ?? '')?.[1] ?? 0);
  await expect.poll(warnings, { timeout: 30_000 }).toBeGreaterThan(10);
  await shot(page, 'problems');
  await runCommand(page, 'View: Toggle Panel Visibility');
});

test('the status item counts sizes and findings', async () => {
  await openNote(page, '05-iv-cannulas.md');
  const item = page.locator('.statusbar-item[id*="sizewright"]').first();
  await item.waitFor();
  expect(await item.getAttribute('aria-label')).toMatch(/\d+ sizes, \d+ findings/);
});

test('a finding leads to the page of its check', async () => {
  await openNote(page, '05-iv-cannulas.md');
  await squiggle().waitFor();
  const { line, column } = placeOf(onDisk('05-iv-cannulas.md'), 'faster than a 16 G');
  await goTo(page, line, column + 1);
  const hover = await hoverHere(page);
  await hover.locator('a', { hasText: 'flow' }).first().click();
  await page.locator('.tab.active', { hasText: 'flow' }).first().waitFor();
  await shot(page, 'check-page');
  await expect.poll(() => editorText(page)).toContain('Its id is');
});

test('the server is killed and comes back; nothing is lost', async () => {
  await openNote(page, 'k-kill.md');
  await squiggle().waitFor();
  const [before] = workbench.servers();
  expect(before).toBeGreaterThan(0);
  process.kill(before!, 'SIGKILL');
  await expect.poll(() => workbench.servers().some((id) => id !== before), { timeout: 30_000 }).toBe(true);
  await goTo(page, 3, 1);
  await page.keyboard.type('Now: ');
  await squiggle().waitFor({ timeout: 60_000 });
  await goTo(page, 3, 26);
  await takeFix(page, 'Write “thicker”');
  await expect.poll(() => editorText(page)).toContain('Now: A 16 G cannula is thicker than');
});

test('saving mends what is safe, when the author wants it', async () => {
  writeFileSync(join(workbench.folder, 'h-save.md'), NOTES['h-save.md'] ?? '');
  await withSettings({ 'editor.codeActionsOnSave': { 'source.fixAll.sizewright': 'explicit' } });
  await openNote(page, 'h-save.md');
  await squiggle().waitFor();
  const mended = `# Saved\n\n${WRONG.replace('thinner', 'thicker')}`;
  // The workbench gives a fix on save little time; on a busy machine the author saves again.
  for (let attempt = 0; attempt < 5 && onDisk('h-save.md') !== mended; attempt++) {
    await goTo(page, 1, attempt > 0 ? 8 : 7);
    if (attempt > 0) await page.keyboard.press('Backspace');
    await page.keyboard.type('d');
    await save();
    await expect
      .poll(() => onDisk('h-save.md'), { timeout: 4000 })
      .toBe(mended)
      .catch(() => undefined);
  }
  expect(onDisk('h-save.md')).toBe(mended);
  await withSettings({});
});

test('a folder that is not trusted is read all the same', async () => {
  const trust = 'security.workspace.trust';
  await withSettings({ [`${trust}.enabled`]: true, [`${trust}.startupPrompt`]: 'never' });
  await page.getByText('Restricted Mode').first().waitFor();
  await openNote(page, '05-iv-cannulas.md');
  await squiggle().waitFor({ timeout: 60_000 });
  await shot(page, 'restricted');
  await withSettings({});
});

test('hovers read well in dark and high-contrast themes', async () => {
  for (const [theme, name] of [
    ['Default Dark Modern', 'hover-dark'],
    ['Default High Contrast', 'hover-high-contrast'],
    ['Default Light Modern', 'hover-light'],
  ] as const) {
    await withSettings({ 'workbench.colorTheme': theme });
    await cursorOn('05-iv-cannulas.md', '18 G');
    const hover = await hoverHere(page);
    await hover.locator('img').first().waitFor();
    await page.waitForTimeout(400);
    await shot(page, name);
    expect(
      await hover
        .locator('img')
        .first()
        .evaluate((image: HTMLImageElement) => image.naturalWidth),
    ).toBeGreaterThan(50);
    await page.keyboard.press('Escape');
  }
});

test('millimetres stand after sizes when the author wants them', async () => {
  await withSettings({ 'sizewright.hints.millimetres': true });
  await openNote(page, '06-french-catheters.md');
  const hint = page.locator('.view-line', { hasText: '4.67 mm' }).first();
  await hint.waitFor();
  await shot(page, 'hints');
  await withSettings({});
});

test('the walkthrough leads in', async () => {
  if (await page.locator('.part.panel').isVisible()) await page.keyboard.press('Control+J');
  await runCommand(page, 'Welcome: Open Walkthrough');
  await answerInput(page, 'Sizes in your teaching notes');
  await page.getByText('Write as you always do').first().waitFor();
  // The page beside the step is shown where there is room.
  await page.keyboard.press('Control+B');
  await webview(page).getByText('What a hover tells').first().waitFor({ timeout: 20_000 });
  await page.waitForTimeout(600);
  await shot(page, 'walkthrough');
  await page.keyboard.press('Control+B');
});
