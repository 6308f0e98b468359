import { X } from 'lucide-react';
import { useEffect, useState } from 'react';
import type { Params, Result } from '../../../electron/contract/requests.ts';
import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import type { Clip, Entry, Flag } from '../../../engine/review/review.ts';
import { Dialog } from '../../base/Dialog.tsx';
import { mutate } from '../../bridge/mutate.ts';
import { read } from '../../bridge/read.ts';
import { catalogueState } from '../../state/catalogueState.ts';
import { reviewState } from '../../state/reviewState.ts';
import { sayArranging } from '../../words/sayArranging.ts';
import { saySeverity } from '../../words/saySeverity.ts';

type Parked = Result<'parked.get'>;

/** What is parked in a session; read again after each change. */
export function useParked(sessionId: string): Parked | null {
  const [parked, setParked] = useState<Parked | null>(null);
  const revision = reviewState((state) => state.revision);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is parked is old once the session has changed
  useEffect(() => {
    let stale = false;
    void read('parked.get', { sessionId }).then((answer) => {
      if (!stale && answer !== null) setParked(answer);
    });
    return () => {
      stale = true;
    };
  }, [sessionId, revision]);
  return parked;
}

/** What was judged and means nothing for the exercises of now, clip by clip, to be discarded where a person says so. */
export function ParkedDialog({ sessionId, onClose }: { readonly sessionId: string; readonly onClose: () => void }) {
  const parked = useParked(sessionId);
  const review = reviewState((state) => state.data?.review);
  const catalogue = catalogueState((state) => state.catalogue);
  if (parked === null || review === undefined || catalogue === null) return null;
  const clips = review.entries.flatMap((entry) => entry.clips.map((clip) => ({ entry, clip })));
  const shown = clips
    .map((one) => ({ ...one, lines: linesOf(parked, one.clip, catalogue) }))
    .filter(({ lines }) => lines.length > 0);
  return (
    <Dialog title={sayArranging('parkedTitle')} onClose={onClose}>
      <p className="soft">{sayArranging(shown.length === 0 ? 'noneParked' : 'parkedWords')}</p>
      {shown.map((one) => (
        <ParkedOfClip key={one.clip.id} {...one} catalogue={catalogue} />
      ))}
    </Dialog>
  );
}

type Line = { readonly key: string; readonly words: string; readonly named: Omit<Params<'parked.discard'>, 'clipId'> };

type ParkedOfClipProps = {
  readonly entry: Entry;
  readonly clip: Clip;
  readonly lines: readonly Line[];
  readonly catalogue: Catalogue;
};

function ParkedOfClip({ entry, clip, lines, catalogue }: ParkedOfClipProps) {
  const exercise = catalogue.exercises.find(({ id }) => id === entry.exercise)?.name ?? entry.exercise;
  const discard = (named: Line['named']): void => void mutate('parked.discard', { clipId: clip.id, ...named });
  return (
    <section className="parked" aria-label={sayArranging('parkedOf', { exercise, clip: clip.name })}>
      <h3>{sayArranging('parkedOf', { exercise, clip: clip.name })}</h3>
      <ul>
        {lines.map(({ key, words, named }) => (
          <li key={key}>
            <span>{words}</span>
            <button
              type="button"
              className="icon-button"
              aria-label={sayArranging('discardOf', { what: words })}
              title={sayArranging('discard')}
              onClick={() => discard(named)}
            >
              <X aria-hidden="true" />
            </button>
          </li>
        ))}
      </ul>
      {lines.length > 1 && (
        <button type="button" className="quiet-button" onClick={() => discard({})}>
          {sayArranging('discardAll')}
        </button>
      )}
    </section>
  );
}

function linesOf(parked: Parked, clip: Clip, catalogue: Catalogue): readonly Line[] {
  const flags = parked.flags
    .filter((flag) => flag.clip === clip.id)
    .map((flag) => ({
      key: `flag ${flag.id}`,
      words: flagWords(flag, catalogue),
      named: { flagIds: [flag.id ?? ''] },
    }));
  const ticks = parked.ticks
    .filter(({ clipId }) => clipId === clip.id)
    .map(({ criterion, count }) => ({
      key: `tick ${criterion}`,
      words: sayArranging('parkedTicks', { what: criterionWords(criterion, catalogue), count }),
      named: { criteria: [criterion] },
    }));
  return [...flags, ...ticks];
}

const criterionWords = (criterion: string, catalogue: Catalogue): string =>
  catalogue.rubric.criteria.find(({ id }) => id === criterion)?.name ?? criterion;

/** A fault by the name that whichever exercise knows it gives it: the flag's own exercise is another one by now. */
function flagWords({ criterion, fault, severity, reps }: Flag, catalogue: Catalogue): string {
  const known = catalogue.exercises
    .flatMap((exercise) => exercise.faults)
    .find((one) => one.id === fault && one.criterion === criterion);
  const what = known?.name ?? criterionWords(criterion, catalogue);
  const which =
    reps === 'set' ? sayArranging('wholeSet') : sayArranging('reps', { count: reps.length, reps: [...reps] });
  return severity === null
    ? sayArranging('parkedNote', { what, reps: which })
    : sayArranging('parkedFlag', { what, severity: saySeverity(severity), reps: which });
}
