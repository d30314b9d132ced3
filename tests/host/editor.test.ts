/** In a real VS Code workbench: the .vsix installs, a demo note shows its squiggles, a hover reads a size. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { goTo, hoverHere, openBrowser, openNote, placeOf, shot } from './browser.ts';
import { startWorkbench, vsixPath, type Workbench } from './workbench.ts';

const NOTE = '05-iv-cannulas.md';
let workbench: Workbench;
let page: Page;
let context: BrowserContext;

beforeAll(async () => {
  workbench = await startWorkbench({ vsix: vsixPath() });
  ({ page, context } = await openBrowser(workbench.url));
});

afterAll(async () => {
  await context?.close();
  workbench?.stop();
});

test('a demo note shows where it contradicts the standards', async () => {
  await openNote(page, NOTE);
  await page.locator('.squiggly-warning, .squiggly-error').first().waitFor({ timeout: 60_000 });
  await shot(page, 'squiggle');
  expect(await page.locator('.squiggly-warning, .squiggly-error').count()).toBeGreaterThan(0);
});

test('a hover explains what is wrong, beside the words', async () => {
  const { line, column } = placeOf(readFileSync(join(workbench.folder, NOTE), 'utf8'), 'faster than a 16 G');
  await goTo(page, line, column + 1);
  const hover = await hoverHere(page);
  await hover.getByText('20 G flows faster than 16 G').first().waitFor({ timeout: 30_000 });
  // Hovers fade in; the picture in the README is taken when they have.
  await page.waitForTimeout(600);
  await shot(page, 'finding');
  expect(await hover.textContent()).toContain('flows slower than 16 G');
});

test('a hover reads the size', async () => {
  const { line, column } = placeOf(readFileSync(join(workbench.folder, NOTE), 'utf8'), '18 G');
  await goTo(page, line, column + 1);
  const hover = await hoverHere(page);
  await hover.getByText('18 G').first().waitFor({ timeout: 30_000 });
  await page.waitForTimeout(600);
  await shot(page, 'hover');
  const text = await hover.textContent();
  expect(text).toContain('mm outside');
  expect(text).toContain('Teaching aid');
});
