import { mutate } from '../bridge/mutate.ts';
import { rackside } from '../bridge/rackside.ts';
import { statusState } from '../bridge/statusState.ts';
import { inboxState } from '../state/inboxState.ts';
import { jobsState } from '../state/jobsState.ts';
import { sayInbox } from '../words/sayInbox.ts';
import { sayProblem } from '../words/sayProblem.ts';

const mostNamed = 3;

/** Takes files and folders into the inbox, and says what came of it. */
export async function takeIn(paths: readonly string[]): Promise<void> {
  if (paths.length === 0) return;
  const taken = await mutate('inbox.take', { paths: [...paths] });
  if (taken === null) return;
  void jobsState.getState().refresh();
  await inboxState.getState().refreshCount();
  const { passedOver, passedOverNames } = taken;
  const names = [...passedOverNames.slice(0, mostNamed), ...(passedOver > mostNamed ? ['…'] : [])].join(', ');
  const words = sayInbox('taken', { taken: taken.taken, there: taken.alreadyThere, others: passedOver, names });
  statusState.getState().tell(words);
}

/** Asks for files, then takes them in. */
export async function takeFiles(): Promise<void> {
  const reply = await rackside().askWindow('clips.choose', {});
  if (!reply.ok) statusState.getState().tell(sayProblem(reply.problem));
  else await takeIn(reply.value.paths);
}

/** Asks for a folder, then takes its films in. */
export async function takeFolder(): Promise<void> {
  const reply = await rackside().askWindow('inbox.chooseFolder', {});
  if (!reply.ok) statusState.getState().tell(sayProblem(reply.problem));
  else if (reply.value.path !== null) await takeIn([reply.value.path]);
}
