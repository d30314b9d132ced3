/** Pages about checks, opened from the id of a finding. */
import { type Disposable, l10n, workspace } from 'vscode';
import type { BaseLanguageClient } from 'vscode-languageclient';

export const offerPages = (client: BaseLanguageClient): Disposable[] => [
  workspace.registerTextDocumentContentProvider('sizewright-check', {
    async provideTextDocumentContent(uri) {
      const id = uri.path.replace(/^\/|\.md$/g, '');
      const page = await client.sendRequest<string | null>('sizewright/check', { id });
      return page ?? l10n.t('There is no check of this name.');
    },
  }),
];
