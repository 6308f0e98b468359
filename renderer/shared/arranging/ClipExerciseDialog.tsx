import { useState } from 'react';
import type { Clip, Entry } from '../../../engine/review/review.ts';
import { FormDialog } from '../../base/Dialog.tsx';
import { ExercisePicker } from '../../base/ExercisePicker.tsx';
import { mutate } from '../../bridge/mutate.ts';
import { catalogueState } from '../../state/catalogueState.ts';
import { sayArranging } from '../../words/sayArranging.ts';

type ClipExerciseDialogProps = { readonly clip: Clip; readonly entry: Entry; readonly onClose: () => void };

/** As what one clip is judged, apart from the others of its exercise. */
export function ClipExerciseDialog({ clip, entry, onClose }: ClipExerciseDialogProps) {
  const catalogue = catalogueState((state) => state.catalogue);
  const [exercise, setExercise] = useState(entry.exercise);
  const change = async (): Promise<void> => {
    const to = { kind: 'exercise', exercise } as const;
    if (exercise === entry.exercise || (await mutate('clips.move', { clipId: clip.id, to })) !== null) onClose();
  };
  return (
    <FormDialog title={sayArranging('clipExercise')} doing={sayArranging('change')} onDone={change} onClose={onClose}>
      <p className="soft">{sayArranging('clipExerciseWords')}</p>
      {catalogue !== null && <ExercisePicker catalogue={catalogue} chosen={exercise} onChoose={setExercise} />}
    </FormDialog>
  );
}
