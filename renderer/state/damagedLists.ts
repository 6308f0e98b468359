import type { DamagedList } from '../../electron/contract/library.ts';
import { read } from '../bridge/read.ts';
import { statusState } from '../bridge/statusState.ts';
import { sayDesk } from '../words/sayDesk.ts';

const names: Readonly<Record<DamagedList, () => string>> = {
  trainees: () => sayDesk('damagedTrainees'),
  sessions: () => sayDesk('damagedSessions'),
  inbox: () => sayDesk('damagedInbox'),
};

/** Says which lists a fault of the disk changed, where one did. */
export async function tellDamagedLists(): Promise<void> {
  const damaged = await read('library.damage', {});
  if (damaged === null || damaged.length === 0) return;
  statusState.getState().tell(sayDesk('listsDamaged', { lists: damaged.map((list) => names[list]()).join(', ') }));
}
