/**
 * Sizes in the Markdown preview: a quiet tooltip with the thickness and the conversions. The preview cannot wait, so it
 * shows what the server said last; when the server says something new, the preview is drawn again.
 */
import { commands, type Uri } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';
import { type MarkdownReader, type Tip, withTips } from './preview-marks.ts';

/** After a drawing, ms: a keystroke draws the preview several times. */
const QUIET = 250;

const known = new Map<string, { readonly tips: readonly Tip[]; readonly said: string }>();
const waiting = new Map<string, ReturnType<typeof setTimeout>>();

/** What the preview calls when it first opens. */
export function previewExtender(
  client: BaseLanguageClient,
): <Reader extends MarkdownReader>(reader: Reader) => Reader {
  return (reader) => {
    const render = reader.renderer.render.bind(reader.renderer);
    // Only drawing knows whose text it is, so the tokens are marked there and not when they are read.
    reader.renderer.render = (tokens, options, env) => {
      const uri = (env as { currentDocument?: Uri } | undefined)?.currentDocument?.toString();
      if (uri === undefined) return render(tokens, options, env);
      askSoon(client, uri);
      return render(withTips(tokens, known.get(uri)?.tips ?? []), options, env);
    };
    return reader;
  };
}

function askSoon(client: BaseLanguageClient, uri: string): void {
  clearTimeout(waiting.get(uri));
  waiting.set(
    uri,
    setTimeout(() => void ask(client, uri), QUIET),
  );
}

async function ask(client: BaseLanguageClient, uri: string): Promise<void> {
  waiting.delete(uri);
  const tips = await client.sendRequest<Tip[] | null>('sizewright/tips', { uri }).catch(() => null);
  const said = JSON.stringify(tips);
  if (tips === null || known.get(uri)?.said === said) return;
  known.set(uri, { tips, said });
  await commands.executeCommand('markdown.preview.refresh');
}
