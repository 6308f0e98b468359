import type { Backend } from '../../contract/backend.ts';
import type { handoverWindowRequests } from '../../contract/handover.ts';
import { safeFileName } from './safeFileName.ts';
import type { SystemDialogs } from './systemDialogs.ts';
import type { WindowAnswer } from './windowAnswer.ts';

type HandoverAnswers = { readonly [N in keyof typeof handoverWindowRequests]: WindowAnswer<N> };

/** Asks where a handover goes or comes from, then has the backend do it. */
export function handoverAnswers(dialogs: SystemDialogs, ask: Backend['ask']): HandoverAnswers {
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
    'handover.takeIn': async ({ from }) => {
      const path = await (from === 'folder' ? dialogs.whichFolder('takeIn') : dialogs.whichSessionFile());
      if (path === null) return { ok: true, value: { jobId: null } };
      const taken = await ask('reviews.import', { path });
      return taken.ok ? { ok: true, value: { jobId: taken.value.jobId } } : taken;
    },
  };
}
