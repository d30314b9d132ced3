/** Debian's Chromium on a workbench, and what an author does there. */
import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { type BrowserContext, chromium, type Locator, type Page } from 'playwright-core';
import { ROOT } from './workbench.ts';

const CHROMIUM = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];
const SHOTS = join(ROOT, 'artifacts', 'editor');

export async function openBrowser(url: string): Promise<{ page: Page; context: BrowserContext }> {
  const executablePath = CHROMIUM.find(existsSync);
  if (executablePath === undefined) throw new Error('needs Chromium: apt-get install chromium');
  const browser = await chromium.launch({
    executablePath,
    args: ['--headless', '--no-sandbox', '--disable-gpu', '--disable-quic'],
  });
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  context.on('close', () => void browser.close());
  const page = await context.newPage();
  await page.goto(url);
  await page.locator('.monaco-workbench .explorer-viewlet, .monaco-workbench .part.editor').first().waitFor();
  return { page, context };
}

/** Opens a note by name. */
export async function openNote(page: Page, name: string): Promise<void> {
  await page.keyboard.press('Control+P');
  const input = page.locator('.quick-input-widget input');
  await input.waitFor();
  await input.fill(name);
  await page.locator('.quick-input-list .monaco-list-row', { hasText: name }).first().waitFor();
  await page.keyboard.press('Enter');
  await page
    .locator(`.editor-instance[aria-label*="${name}"], .tab[aria-label*="${name}"]`)
    .first()
    .waitFor();
  await page.locator('.monaco-editor .view-line').first().waitFor();
}

/** Runs a command from the palette. */
export async function runCommand(page: Page, title: string): Promise<void> {
  await page.keyboard.press('F1');
  const input = page.locator('.quick-input-widget input');
  await input.waitFor();
  await input.fill(`>${title}`);
  await page.locator('.quick-input-list .monaco-list-row', { hasText: title }).first().waitFor();
  await page.keyboard.press('Enter');
}

/** Puts the cursor at a 1-based line and column. */
export async function goTo(page: Page, line: number, column: number): Promise<void> {
  await page.keyboard.press('Control+G');
  const input = page.locator('.quick-input-widget input');
  await input.waitFor();
  await input.fill(`:${line}:${column}`);
  await page.keyboard.press('Enter');
  await input.waitFor({ state: 'hidden' });
}

/** The hover at the cursor, by keyboard. */
export async function hoverHere(page: Page): Promise<Locator> {
  await page.keyboard.press('Control+K');
  await page.keyboard.press('Control+I');
  const hover = page.locator('.monaco-hover:not(.hidden) .monaco-hover-content').first();
  await hover.waitFor();
  return hover;
}

export async function shot(page: Page, name: string): Promise<void> {
  mkdirSync(SHOTS, { recursive: true });
  await page.screenshot({ path: join(SHOTS, `${name}.png`) });
}

/** Line and column, 1-based, of some words in a text. */
export function placeOf(text: string, words: string): { line: number; column: number } {
  const at = text.indexOf(words);
  if (at < 0) throw new Error(`not in the note: ${words}`);
  const before = text.slice(0, at).split('\n');
  return { line: before.length, column: before.at(-1)!.length + 1 };
}
