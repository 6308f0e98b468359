import { arrangingState } from './arrangingState.ts';
import { ClipExerciseDialog } from './ClipExerciseDialog.tsx';
import { MergeSessionDialog } from './MergeSessionDialog.tsx';
import { MoveClipDialog } from './MoveClipDialog.tsx';
import { MoveEntryDialog } from './MoveEntryDialog.tsx';
import { MoveSessionDialog } from './MoveSessionDialog.tsx';
import { ParkedDialog } from './ParkedDialog.tsx';
import { RenameClipDialog, RenameSessionDialog } from './RenameDialogs.tsx';

/** The dialog of arranging that is open, over any screen. */
export function ArrangingDialogs() {
  const { open, close } = arrangingState();
  switch (open.kind) {
    case 'none':
      return null;
    case 'renameSession':
      return <RenameSessionDialog session={open.session} onClose={close} />;
    case 'renameClip':
      return <RenameClipDialog clip={open.clip} onClose={close} />;
    case 'moveSession':
      return <MoveSessionDialog session={open.session} onClose={close} />;
    case 'mergeSession':
      return <MergeSessionDialog session={open.session} onClose={close} />;
    case 'moveClip':
      return <MoveClipDialog clip={open.clip} entry={open.entry} sessionId={open.sessionId} onClose={close} />;
    case 'clipExercise':
      return <ClipExerciseDialog clip={open.clip} entry={open.entry} onClose={close} />;
    case 'moveEntry':
      return <MoveEntryDialog entry={open.entry} sessionId={open.sessionId} onClose={close} />;
    case 'parked':
      return <ParkedDialog sessionId={open.sessionId} onClose={close} />;
  }
}
