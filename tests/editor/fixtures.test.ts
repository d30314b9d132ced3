/** Every fixture over a client in memory: what an author sees in any editor. */
import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Client, startClient } from '../lsp/client.ts';
import { answer } from './answers.ts';
import { readScenarios, rewrite, takeCursor } from './fixture.ts';

const FOLDER = join(dirname(fileURLToPath(import.meta.url)), 'fixtures');

let client: Client;
beforeAll(async () => {
  client = await startClient({ settings: { hints: { millimetres: true } } });
});
afterAll(() => {
  expect(client.errors).toEqual([]);
  client.close();
});

let opened = 0;

for (const file of readdirSync(FOLDER).sort()) {
  const path = join(FOLDER, file);
  describe(file, () => {
    test.each(readScenarios(path).map((each) => [each.title, each] as const))(
      '%s',
      async (title, { note, blocks }) => {
        expect(blocks.length).toBeGreaterThan(0);
        const { text, ...position } = takeCursor(note);
        const uri = client.open(text, `${file}-${opened++}.md`);
        for (const { asks, expected } of blocks) {
          const shown = await answer({ client, uri, text, position }, asks);
          if (process.env.UPDATE === '1') rewrite(path, title, asks, shown);
          else expect(shown, asks).toBe(expected);
        }
        void client.connection.sendNotification('textDocument/didClose', { textDocument: { uri } });
      },
    );
  });
}
