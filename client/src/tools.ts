/** Tools for an assistant in the editor; older editors have none. */
import * as vscode from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';

/** The part of the editor's newer interface that is used, typed here because older editors lack it. */
interface ToolHost {
  readonly lm?: { registerTool?(name: string, tool: object): vscode.Disposable };
  readonly LanguageModelToolResult?: new (parts: object[]) => object;
  readonly LanguageModelTextPart?: new (text: string) => object;
}

const TOOLS = ['listSizes', 'checkSizes', 'convertSize'] as const;

export function offerTools(client: BaseLanguageClient): vscode.Disposable[] {
  const host = vscode as unknown as ToolHost;
  const { lm, LanguageModelToolResult: Result, LanguageModelTextPart: Part } = host;
  if (lm?.registerTool === undefined || Result === undefined || Part === undefined) return [];
  return TOOLS.map((name) =>
    lm.registerTool!(`sizewright_${name}`, {
      async invoke({ input }: { input: { text?: unknown } }) {
        const text = String(input.text ?? '');
        const answer = await client.sendRequest<string | null>('sizewright/tool', { name, text });
        return new Result([new Part(answer ?? '')]);
      },
    }),
  );
}
