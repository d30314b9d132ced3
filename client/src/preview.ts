/**
 * Sizes in the Markdown preview: a quiet tooltip with the thickness and the conversions. The preview cannot wait, so it
 * shows what the server said last; when the server says something new, the preview is drawn again.
 */
import { commands, type Uri } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { type MarkdownReader, markSizes, type Tip } from './preview-marks.ts';

/** After a drawing, ms: a keystroke draws the preview several times. */
const QUIET = 250;

const known = new Map<string, { readonly tips: readonly Tip[]; readonly said: string }>();
const waiting = new Map<string, ReturnType<typeof setTimeout>>();

/** What the preview calls when it first opens. */
export function previewExtender(
  client: BaseLanguageClient,
): <Reader extends MarkdownReader>(reader: Reader) => Reader {
  return (reader) => {
    reader.core.ruler.push('sizewright', (state) => {
      const uri = (state.env as { currentDocument?: Uri } | undefined)?.currentDocument?.toString();
      if (uri === undefined) return;
      markSizes(state, known.get(uri)?.tips ?? []);
      clearTimeout(waiting.get(uri));
      waiting.set(
        uri,
        setTimeout(() => void ask(client, uri), QUIET),
      );
    });
    return reader;
  };
}

async function ask(client: BaseLanguageClient, uri: string): Promise<void> {
  waiting.delete(uri);
  const tips = await client.sendRequest<Tip[] | null>('sizewright/tips', { uri }).catch(() => null);
  const said = JSON.stringify(tips);
  if (tips === null || known.get(uri)?.said === said) return;
  known.set(uri, { tips, said });
  await commands.executeCommand('markdown.preview.refresh');
}
