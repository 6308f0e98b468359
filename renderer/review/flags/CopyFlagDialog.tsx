import { useState } from 'react';
import type { Flag, Review } from '../../../engine/review/review.ts';
import { exerciseName } from '../../../engine/sheet/flagRows.ts';
import { FormDialog } from '../../base/Dialog.tsx';
import type { Column } from '../../state/cursorState.ts';
import { sayFlags } from '../../words/sayFlags.ts';
import { type CopyTarget, copyFlag, copyTargets } from '../commands/copying.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { columnKey, columnsOfClip, sameColumn } from '../model/columns.ts';
import { flagWords } from '../model/flagWords.ts';
import { copyState } from '../state/panelState.ts';

const close = (): void => copyState.setState({ flagId: null });

/** Asks where a flag is to be copied to: other reps, sets or clips, as many as are ticked. */
export function CopyFlagDialog({ review }: { readonly review: Review }) {
  const flagId = copyState((state) => state.flagId);
  const flag = review.entries.flatMap(({ flags }) => flags).find(({ id }) => id === flagId);
  return flag === undefined ? null : <Places key={flag.id} flag={flag} review={review} />;
}

function Places({ flag, review }: { readonly flag: Flag; readonly review: Review }) {
  const { data, stage } = useReview();
  const [to, setTo] = useState<readonly Column[]>([]);
  if (stage === null) return null;
  const toggle = (column: Column): void =>
    setTo(to.some((one) => sameColumn(one, column)) ? to.filter((one) => !sameColumn(one, column)) : [...to, column]);
  const entry = review.entries.find(({ flags }) => flags.includes(flag)) ?? stage.entry;
  return (
    <FormDialog
      title={sayFlags('copyTitle', { flag: flagWords(flag, { entry, catalogue: stage.catalogue }) })}
      doing={sayFlags('copyDo', { count: to.length })}
      ready={to.length === 0 ? 'waiting' : 'ready'}
      onDone={async () => {
        if (await copyFlag(review, flag, to)) close();
      }}
      onClose={close}
    >
      <p className="soft">{sayFlags('copyHint')}</p>
      {copyTargets({ data, stage }, flag).map((target) => (
        <PlacesOfClip
          key={target.clip.id}
          target={target}
          name={clipName(target, exerciseName(stage.catalogue, target.entry.exercise), flag)}
          own={flag}
          to={to}
          onToggle={toggle}
        />
      ))}
    </FormDialog>
  );
}

const clipName = ({ entry, clip }: CopyTarget, exercise: string, flag: Flag): string =>
  sayFlags(clip.id === flag.clip ? 'thisClip' : 'otherClip', {
    exercise,
    set: entry.clips.indexOf(clip) + 1,
    clip: clip.name,
  });

type PlacesOfClipProps = {
  readonly target: CopyTarget;
  readonly name: string;
  readonly own: Flag;
  readonly to: readonly Column[];
  readonly onToggle: (column: Column) => void;
};

function PlacesOfClip({ target: { clip }, name, own, to, onToggle }: PlacesOfClipProps) {
  const isOwn = ({ clipId, rep }: Column): boolean =>
    clipId === own.clip && (rep === 'set' || own.reps === 'set' ? rep === own.reps : own.reps.includes(rep));
  return (
    <fieldset className="copy-places">
      <legend>{name}</legend>
      {columnsOfClip(clip)
        .filter((column) => !isOwn(column))
        .map((column) => (
          <label key={columnKey(column)}>
            <input
              type="checkbox"
              checked={to.some((one) => sameColumn(one, column))}
              onChange={() => onToggle(column)}
            />{' '}
            {column.rep === 'set' ? sayFlags('wholeSet') : sayFlags('rep', { rep: column.rep })}
          </label>
        ))}
    </fieldset>
  );
}
