import type { Backend } from '../../contract/backend.ts';
import type { Reply } from '../../contract/reply.ts';
import type { CheckedWindowParams, WindowRequestName } from '../../contract/requests.ts';
import { handoverAnswers } from './handoverAnswers.ts';
import { safeFileName } from './safeFileName.ts';
import type { SystemDialogs } from './systemDialogs.ts';
import type { WindowAnswer } from './windowAnswer.ts';

/** Answers a question of the page that has already been checked. */
export type WindowAnswers = (name: WindowRequestName, params: unknown) => Promise<Reply<unknown>>;

/** What the window's host answers itself: where to save, which clips, where a handover goes. */
export function windowAnswers(dialogs: SystemDialogs, ask: Backend['ask']): WindowAnswers {
  const save: WindowAnswer<'documents.save'> = async ({ suggestedName, ...what }) => {
    const path = await dialogs.whereToSave({
      name: safeFileName(withoutExtension(suggestedName, what.format)),
      extension: what.format,
    });
    if (path === null) return { ok: true, value: { path: null } };
    const written = await ask('documents.write', { ...what, path });
    if (!written.ok) return written;
    const { bytes: _, ...saved } = written.value;
    return { ok: true, value: saved };
  };

  const saveReport: WindowAnswer<'report.save'> = async () => {
    const path = await dialogs.whereToSave({ name: 'rackside-problem-report', extension: 'txt' });
    if (path === null) return { ok: true, value: { path: null } };
    return ask('report.write', { path });
  };

  const answers: { readonly [N in WindowRequestName]: WindowAnswer<N> } = {
    'documents.save': save,
    'report.save': saveReport,
    'clips.choose': async () => ({ ok: true, value: { paths: [...(await dialogs.whichClips())] } }),
    ...handoverAnswers(dialogs, ask),
  };
  return <N extends WindowRequestName>(name: N, params: unknown) => {
    const answer: WindowAnswer<N> = answers[name];
    return answer(params as CheckedWindowParams<N>);
  };
}

function withoutExtension(name: string, extension: string): string {
  const end = `.${extension}`;
  return name.toLowerCase().endsWith(end) ? name.slice(0, -end.length) : name;
}
