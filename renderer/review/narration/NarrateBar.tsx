import { Circle, Download, Headphones, Pause, Square, Trash2 } from 'lucide-react';
import { type KeyboardEvent, useEffect, useRef } from 'react';
import type { Clip } from '../../../engine/review/review.ts';
import { clock } from '../../base/figures.ts';
import { sayNarration } from '../../words/sayNarration.ts';
import { endListening } from '../commands/listenToNarration.ts';
import {
  deleteForGood,
  deleteNarration,
  keepInterrupted,
  leaveNarrating,
  listenToNarration,
  recordNarration,
  saveNarration,
  stopNarration,
} from '../commands/narrating.ts';
import { ReviewButton, useReview } from '../commands/ReviewDeskProvider.tsx';
import { endRecording } from '../commands/recordNarration.ts';
import { narrationState, readNarration } from '../state/narrationState.ts';

/** Speaking over the clip: recording, listening, and what becomes of it; shown while the bar is out. */
export function NarrateBar({ clip }: { readonly clip: Clip }) {
  const context = useReview();
  const narrating = narrationState((state) => state.narrating);
  const bar = useRef<HTMLElement>(null);
  useEffect(() => {
    if (narrating === 'on') void readNarration(clip.id);
  }, [narrating, clip.id]);
  useEffect(() => {
    if (narrating === 'on') bar.current?.querySelector('button')?.focus();
  }, [narrating]);
  // The stage goes, or another clip comes on it: what was said so far is kept.
  useEffect(
    () => () => {
      endListening();
      void endRecording();
    },
    [],
  );
  if (narrating === 'off') return null;
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape') return;
    event.preventDefault();
    event.stopPropagation();
    void leaveNarrating(context);
  };
  return (
    <section ref={bar} className="narrate-bar" aria-label={sayNarration('narration')} onKeyDown={onKeyDown}>
      <Buttons />
      <Notice />
    </section>
  );
}

function Buttons() {
  const context = useReview();
  const { phase, narration, deleting, elapsedUs } = narrationState();
  const active = phase === 'recording' || phase === 'paused';
  const lastsUs = narration?.lastsUs ?? 0;
  if (deleting === 'asked') return <AskDelete />;
  return (
    <div className="narrate-buttons">
      {narration === null && phase !== 'keeping' && (
        <ReviewButton
          command={recordNarration}
          className={phase === 'recording' ? 'recording' : 'primary'}
          words={sayNarration(phase === 'recording' ? 'pause' : phase === 'paused' ? 'goOn' : 'record')}
        >
          {phase === 'recording' ? <Pause aria-hidden="true" /> : <Circle aria-hidden="true" />}
        </ReviewButton>
      )}
      {(active || phase === 'listening') && (
        <ReviewButton command={stopNarration}>
          <Square aria-hidden="true" />
        </ReviewButton>
      )}
      {narration?.state === 'kept' && phase !== 'listening' && (
        <ReviewButton command={listenToNarration}>
          <Headphones aria-hidden="true" />
        </ReviewButton>
      )}
      {narration?.state === 'kept' && (
        <ReviewButton command={saveNarration} shows="words">
          <Download aria-hidden="true" />
        </ReviewButton>
      )}
      {narration?.state === 'recording' && !active && phase !== 'keeping' && (
        <button type="button" className="primary" onClick={() => void keepInterrupted(context)}>
          {sayNarration('keep')}
        </button>
      )}
      {narration !== null && !active && phase !== 'keeping' && (
        <ReviewButton command={deleteNarration} shows="words">
          <Trash2 aria-hidden="true" />
        </ReviewButton>
      )}
      <output className="narrate-time figure" data-testid="narration-time" data-phase={phase}>
        {phase === 'idle' && narration === null
          ? ''
          : sayNarration('time', { phase, now: clock(elapsedUs), whole: clock(lastsUs) })}
      </output>
      <button type="button" onClick={() => void leaveNarrating(context)}>
        {sayNarration('done')}
      </button>
    </div>
  );
}

/** A voice that is deleted can't be had back: so it is asked. */
function AskDelete() {
  const context = useReview();
  const keep = useRef<HTMLButtonElement>(null);
  useEffect(() => keep.current?.focus(), []);
  return (
    <div className="narrate-buttons" role="alertdialog" aria-label={sayNarration('deleteAsked')}>
      <p>{sayNarration('deleteAsked')}</p>
      <button ref={keep} type="button" onClick={() => narrationState.setState({ deleting: 'no' })}>
        {sayNarration('keepIt')}
      </button>
      <button type="button" className="danger" onClick={() => void deleteForGood(context)}>
        {sayNarration('deleteIt')}
      </button>
    </div>
  );
}

/** What happens to the voice, before anything is recorded; and what to do now. */
function Notice() {
  const { phase, narration } = narrationState();
  const id =
    phase === 'recording'
      ? 'whileRecording'
      : phase === 'paused'
        ? 'whilePaused'
        : phase === 'listening'
          ? 'whileListening'
          : narration === null
            ? 'before'
            : narration.state === 'kept'
              ? 'kept'
              : 'interrupted';
  return <p className="soft">{sayNarration(id)}</p>;
}
