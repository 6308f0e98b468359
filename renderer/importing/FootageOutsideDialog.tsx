import { FormDialog } from '../base/Dialog.tsx';
import { rackside } from '../bridge/rackside.ts';
import { statusState } from '../bridge/statusState.ts';
import { jobsState } from '../state/jobsState.ts';
import { sayImporting } from '../words/sayImporting.ts';
import { sayProblem } from '../words/sayProblem.ts';

/** Shows which clips a review file names outside its folder, and imports it with them if the person says so. */
export function FootageOutsideDialog({
  paths,
  onClose,
}: {
  readonly paths: readonly string[];
  readonly onClose: () => void;
}) {
  const count = paths.length;
  const importShown = async (): Promise<void> => {
    const reply = await rackside().askWindow('handover.receiveShown', {});
    if (!reply.ok) statusState.getState().tell(sayProblem(reply.problem));
    else void jobsState.getState().refresh();
    onClose();
  };
  return (
    <FormDialog
      title={sayImporting('outsideTitle')}
      doing={sayImporting('outsideImport', { count })}
      onDone={importShown}
      onClose={onClose}
    >
      <p>{sayImporting('outsideWords', { count })}</p>
      <ul className="outside-paths" data-testid="outside-paths">
        {paths.map((each) => (
          <li key={each}>
            <bdi>{each}</bdi>
          </li>
        ))}
      </ul>
    </FormDialog>
  );
}
