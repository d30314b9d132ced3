/** The browser build with the server in a worker passes the same smoke tests. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
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
} from './browser.ts';
import { ROOT, startWorkbench, type Workbench } from './workbench.ts';

const WRONG = '# Web\n\nA 16 G cannula is thinner than a 20 G cannula.\n';

let workbench: Workbench;
let page: Page;
let context: BrowserContext;

beforeAll(async () => {
  // Without `main` no host but the one in the browser can run it.
  execFileSync('npx', ['tsx', 'client/tools/package.ts', '--web'], { cwd: ROOT, stdio: 'pipe' });
  workbench = await startWorkbench({
    vsix: join(ROOT, '.cache', 'sizewright-web.vsix'),
    notes: { 'web.md': WRONG },
  });
  ({ page, context } = await openBrowser(workbench.url));
});

afterAll(async () => {
  await context?.close();
  workbench?.stop();
});

const squiggle = () => page.locator('.squiggly-warning, .squiggly-error').first();

test('findings and hover arrive from the worker', async () => {
  await openNote(page, '05-iv-cannulas.md');
  await squiggle().waitFor({ timeout: 60_000 });
  const { line, column } = placeOf(readFileSync(join(workbench.folder, '05-iv-cannulas.md'), 'utf8'), '18 G');
  await goTo(page, line, column + 1);
  const hover = await hoverHere(page);
  await shot(page, 'web-hover');
  expect(await hover.textContent()).toContain('mm outside');
});

test('a fix mends, and a table comes by command', async () => {
  await openNote(page, 'web.md');
  await squiggle().waitFor();
  await goTo(page, 3, 20);
  await takeFix(page, 'Write “thicker”');
  await expect.poll(() => editorText(page)).toContain('is thicker than');
  await goTo(page, 4, 1);
  await runCommand(page, 'Insert a Table of Sizes');
  await answerInput(page, 'french');
  await page.getByText('Sizes to show, separated').first().waitFor();
  await answerInput(page, '12 14');
  await expect.poll(() => editorText(page)).toContain('| 14 Fr | 4.67 mm |');
});

test('the whole course is read through the editor', async () => {
  const count = page.locator('#status\\.problems a').first();
  const warnings = async (): Promise<number> =>
    Number(/Warnings: (\d+)/.exec((await count.getAttribute('aria-label')) ?? '')?.[1] ?? 0);
  await expect.poll(warnings, { timeout: 30_000 }).toBeGreaterThan(10);
});

test('it runs in the browser: the host on the server side does not have it', async () => {
  await runCommand(page, 'Show Running Extensions');
  const row = page.locator('.runtime-extensions-editor .monaco-list-row', { hasText: 'Sizewright' }).first();
  await row.waitFor();
  await shot(page, 'web-running');
  expect(await row.textContent()).toMatch(/web/i);
});
