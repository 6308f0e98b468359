import type * as v from 'valibot';
import type { Backend } from '../../backend/port.ts';
import type { Reply } from '../../contract/reply.ts';
import type { WindowRequestName, windowRequests } from '../../contract/requests.ts';
import type { PathChooser } from './chosenPaths.ts';
import { safeFileName } from './safeFileName.ts';

type SaveParams = v.InferOutput<(typeof windowRequests)['documents.save']['params']>;

/** Answers a question of the page that has already been checked. */
export type WindowAnswers = (name: WindowRequestName, params: unknown) => Promise<Reply<unknown>>;

/** What the window's host answers itself: where to save, which clips. */
export function windowAnswers(chooser: PathChooser, ask: Backend['ask']): WindowAnswers {
  const save = async (params: SaveParams): Promise<Reply<unknown>> => {
    const { suggestedName, ...what } = params;
    const path = await chooser.whereToSave({
      name: safeFileName(withoutExtension(suggestedName, params.format)),
      extension: params.format,
    });
    if (path === null) return { ok: true, value: { path: null } };
    const written = await ask('documents.write', { ...what, path });
    return written.ok ? { ok: true, value: { path: written.value.path } } : written;
  };

  return async (name, params) => {
    switch (name) {
      case 'documents.save':
        return save(params as SaveParams);
      case 'clips.choose':
        return { ok: true, value: { paths: await chooser.whichClips() } };
    }
  };
}

function withoutExtension(name: string, extension: string): string {
  const end = `.${extension}`;
  return name.toLowerCase().endsWith(end) ? name.slice(0, -end.length) : name;
}
