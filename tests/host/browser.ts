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

const quickInput = (page: Page): Locator => page.locator('.quick-input-widget input[type=text]').first();

/** Opens the input box in front and writes into it; the workbench may still be busy with what came before. */
async function ask(page: Page, keys: string, text: string): Promise<void> {
  for (let tries = 0; tries < 6; tries++) {
    await page.keyboard.press(keys);
    const written = await quickInput(page)
      .fill(text, { timeout: 3000 })
      .then(
        () => true,
        () => false,
      );
    if (written) return;
    await page.keyboard.press('Escape');
  }
  throw new Error(`no input box after ${keys}`);
}

/** A row of the list under the input box. Enter takes the first row, which need not be the one with these words. */
const rowOf = (page: Page, words: string): Locator =>
  page.locator('.quick-input-list .monaco-list-row', { hasText: words }).first();

/** Takes the first row that holds the words, once it is there. */
async function takeRow(page: Page, words: string): Promise<void> {
  await rowOf(page, words).click({ timeout: 8000 });
  await quickInput(page)
    .waitFor({ state: 'hidden' })
    .catch(() => undefined);
}

/** Opens a note by name; again when the workbench, still restoring others, put one of them in front. */
export async function openNote(page: Page, name: string): Promise<void> {
  const tab = page.locator('.tab.active', { hasText: name }).first();
  for (let tries = 0; tries < 6; tries++) {
    await ask(page, 'Control+P', name);
    await takeRow(page, name).catch(() => page.keyboard.press('Escape'));
    await tab.waitFor({ timeout: 5000 }).catch(() => undefined);
    await page.waitForTimeout(300);
    if (await tab.isVisible()) break;
  }
  await tab.waitFor();
  await page.locator('.monaco-editor .view-line').first().waitFor();
}

/** Runs a command from the palette; opens it again when something else on a busy machine has closed it. */
export async function runCommand(page: Page, title: string): Promise<void> {
  for (let tries = 0; tries < 4; tries++) {
    await ask(page, 'F1', `>${title}`);
    const taken = await rowOf(page, title)
      .click({ timeout: 8000 })
      .then(
        () => true,
        () => false,
      );
    if (taken) return;
    await page.keyboard.press('Escape');
  }
  throw new Error(`no command "${title}" in the palette`);
}

/** Puts the cursor at a 1-based line and column. */
export async function goTo(page: Page, line: number, column: number): Promise<void> {
  await ask(page, 'Control+G', `:${line}:${column}`);
  await page.keyboard.press('Enter');
  await quickInput(page).waitFor({ state: 'hidden' });
}

/** The hover at the cursor, by keyboard; asked for again while the extension is still starting. */
export async function hoverHere(page: Page): Promise<Locator> {
  const hover = page
    .locator('.monaco-hover:not(.hidden) .monaco-hover-content', { hasText: /mm|way/ })
    .first();
  for (let tries = 0; tries < 10; tries++) {
    await page.keyboard.press('Control+K');
    await page.keyboard.press('Control+I');
    const shown = await hover.waitFor({ timeout: 3000 }).then(
      () => true,
      () => false,
    );
    if (shown) return hover;
  }
  throw new Error('no hover at the cursor');
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

/** The text of the editor in front, as shown: lines are elements, so only their layout tells them apart. */
export const editorText = async (page: Page): Promise<string> =>
  // biome-ignore lint/performance/useDomNodeTextContent: the layout is what is asked for
  (await page.locator('.editor-instance .view-lines').first().innerText()).replaceAll('\u00a0', ' ');

/** Answers the input box in front. */
export async function answerInput(page: Page, text: string): Promise<void> {
  const input = quickInput(page);
  await input.waitFor();
  await input.fill(text);
  await page.keyboard.press('Enter');
}

/** Opens the list of fixes at the cursor, keeps a picture of it, and takes one. */
export async function takeFix(page: Page, title: string, picture?: string): Promise<void> {
  const row = page.locator('.action-widget .monaco-list-row', { hasText: title }).first();
  for (let tries = 0; tries < 10 && !(await row.isVisible()); tries++) {
    await page.keyboard.press('Escape');
    await page.keyboard.press('Control+.');
    await row.waitFor({ timeout: 3000 }).catch(() => undefined);
  }
  if (picture !== undefined) await shot(page, picture);
  const wanted = page.locator('.action-widget .monaco-list-row.focused', { hasText: title });
  for (let step = 0; step < 20 && (await wanted.count()) === 0; step++)
    await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
}

/** The page of the only webview that is open. */
export function webview(page: Page): import('playwright-core').FrameLocator {
  return page.frameLocator('iframe.webview.ready').last().frameLocator('iframe#active-frame');
}
