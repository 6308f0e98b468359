import { appendFile, readFile } from 'node:fs/promises';
import filenamify from 'filenamify';
import type { Language } from '../../../engine/language/language.ts';
import type { RuntimeFacts } from '../../contract/about.ts';
import type { Backend } from '../../contract/backend.ts';
import type { handoverWindowRequests } from '../../contract/handover.ts';
import type { Reply } from '../../contract/reply.ts';
import type { CheckedWindowParams, WindowRequestName, WindowResult } from '../../contract/requests.ts';
import type { SystemDialogs } from './systemDialogs.ts';

/** Answers a question of the page that has already been checked. */
export type WindowAnswers = (name: WindowRequestName, params: unknown) => Promise<Reply<unknown>>;

/** How one question of the page to the window's host is answered. */
type WindowAnswer<N extends WindowRequestName> = (params: CheckedWindowParams<N>) => Promise<Reply<WindowResult<N>>>;

type AnswersTo<Names extends WindowRequestName> = { readonly [N in Names]: WindowAnswer<N> };

type AnswerParts = {
  readonly dialogs: SystemDialogs;
  readonly ask: Backend['ask'];
  /** Keeps the language of the desk and says menu and dialogs in it. */
  readonly keepLanguage: (language: Language) => Promise<void>;
  /** What the window runs in, and what it was made from. */
  readonly runtime: () => RuntimeFacts;
  /** The next file that the system asked to open; null when there is none. */
  readonly namedFile: () => string | null;
  /** The log of the window's host, which goes into a problem report. */
  readonly logFile: string;
};

/** What the window's host answers itself: where to save, which clips, where a handover goes. */
export function windowAnswers({ dialogs, ask, keepLanguage, runtime, namedFile, logFile }: AnswerParts): WindowAnswers {
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
    const written = await ask('report.write', { path });
    const log = await readFile(logFile, 'utf8').catch(() => '');
    // The report is worth having without it.
    if (written.ok && log !== '') await appendFile(path, `\nThe window’s log\n${log}`).catch(() => undefined);
    return written;
  };

  const answers: AnswersTo<WindowRequestName> = {
    'documents.save': save,
    'report.save': saveReport,
    'about.runtime': async () => ({ ok: true, value: runtime() }),
    'language.keep': async ({ language }) => {
      await keepLanguage(language);
      return { ok: true, value: {} };
    },
    'clips.choose': async () => ({ ok: true, value: { paths: [...(await dialogs.whichClips())] } }),
    'narrations.save': async ({ clipId, suggestedName }) => {
      const path = await dialogs.whereToSave({ name: safeFileName(suggestedName), extension: 'mp4' });
      if (path === null) return { ok: true, value: { jobId: null } };
      return ask('narrations.render', { clipId, path });
    },
    'inbox.chooseFolder': async () => ({ ok: true, value: { path: await dialogs.whichFolder('import') } }),
    'inbox.watch': async () => {
      const path = await dialogs.whichFolder('watch');
      if (path === null) return { ok: true, value: { path } };
      const set = await ask('settings.change', { watchedFolder: path });
      return set.ok ? { ok: true, value: { path } } : set;
    },
    ...handoverAnswers(dialogs, ask, namedFile),
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

/** Asks where a handover goes or comes from, then has the backend do it. */
function handoverAnswers(
  dialogs: SystemDialogs,
  ask: Backend['ask'],
  namedFile: () => string | null,
): AnswersTo<keyof typeof handoverWindowRequests> {
  const receivedPath = {
    folder: () => dialogs.whichFolder('receive'),
    file: () => dialogs.whichSessionFile(),
    named: async () => namedFile(),
  };
  let shown: { readonly path: string; readonly footageOutside: string[] } | null = null;
  return {
    'handover.deliver': async (what) => {
      const folder = await dialogs.whichFolder('handOver');
      if (folder === null) return { ok: true, value: { jobIds: null } };
      return ask('handover.start', { ...what, folder });
    },
    'handover.saveKept': async ({ suggestedName, ...which }) => {
      const path = await dialogs.whereToSave({ name: safeFileName(suggestedName), extension: 'zip' });
      if (path === null) return { ok: true, value: { path: null } };
      const written = await ask('handover.writeKept', { ...which, path });
      return written.ok ? { ok: true, value: { path: written.value.path } } : written;
    },
    'handover.show': async ({ sessionId, jobId }) => {
      const handed = await ask('handover.list', { sessionId });
      if (!handed.ok) return handed;
      const delivery = handed.value.deliveries.find((each) => each.jobId === jobId);
      if (delivery !== undefined) dialogs.showInFolder(delivery.path);
      return { ok: true, value: {} };
    },
    'handover.receive': async ({ from }) => {
      const path = await receivedPath[from]();
      shown = null;
      if (path === null) return { ok: true, value: { jobId: null, footageOutside: [] } };
      const outside = await ask('reviews.footageOutside', { path });
      if (!outside.ok) return outside;
      if (outside.value.length > 0) {
        shown = { path, footageOutside: outside.value };
        return { ok: true, value: { jobId: null, footageOutside: outside.value } };
      }
      const taken = await ask('reviews.import', { path });
      return taken.ok ? { ok: true, value: { jobId: taken.value.jobId, footageOutside: [] } } : taken;
    },
    'handover.receiveShown': async () => {
      const allowed = shown;
      shown = null;
      if (allowed === null) return { ok: true, value: { jobId: null } };
      const taken = await ask('reviews.import', allowed);
      return taken.ok ? { ok: true, value: { jobId: taken.value.jobId } } : taken;
    },
  };
}

/**
 * A file name that every file system takes: no separators, invisible characters or marks with a meaning; not empty, not
 * hidden, not a device of Windows, about 100 characters at most.
 */
export function safeFileName(suggestion: string): string {
  const name = filenamify(suggestion, { replacement: ' ' })
    .replace(/\s+/g, ' ')
    .replace(/^[.\s]+/, '');
  return name === '' || name === '!' ? 'Rackside' : name;
}
