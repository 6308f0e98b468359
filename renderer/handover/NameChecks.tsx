import { EyeOff, Pencil, SpellCheck, Volume2 } from 'lucide-react';
import { type Ref, useId } from 'react';
import type { SessionSummary } from '../../electron/contract/desk.ts';
import type { NameDoubt } from '../../electron/contract/names.ts';
import type { NamesMessageId } from '../../engine/wording/english/desk/names.ts';
import { day } from '../base/figures.ts';
import { mutate } from '../bridge/mutate.ts';
import { statusState } from '../bridge/statusState.ts';
import { screenState } from '../state/screenState.ts';
import { sayNames } from '../words/sayNames.ts';
import type { HeldSession } from './useNameDoubts.ts';

type NameChecksProps = {
  readonly held: readonly HeldSession[];
  readonly chosen: readonly SessionSummary[];
  /** Called when something was decided. */
  readonly onDecided: () => void;
  /** For who sends the person here. */
  readonly heading: Ref<HTMLHeadingElement>;
};

/** The places that may hold a hidden name, each to be hidden, left or edited, before anything is handed over. */
export function NameChecks({ held, chosen, onDecided, heading }: NameChecksProps) {
  const titleId = useId();
  if (held.length === 0) return null;
  const count = held.reduce((sum, { doubts }) => sum + doubts.length, 0);
  return (
    <section className="name-checks" aria-labelledby={titleId}>
      <h2 id={titleId} ref={heading} tabIndex={-1}>
        {sayNames('title')} <span className="soft">{sayNames('places', { count })}</span>
      </h2>
      <p className="soft">{sayNames('explain', { count })}</p>
      {held.map(({ sessionId, doubts }) => (
        <SessionChecks
          key={sessionId}
          sessionId={sessionId}
          session={chosen.find(({ id }) => id === sessionId)}
          doubts={doubts}
          onDecided={onDecided}
        />
      ))}
    </section>
  );
}

type Verdict = 'name' | 'noName';

type SessionChecksProps = {
  readonly sessionId: string;
  readonly session: SessionSummary | undefined;
  readonly doubts: readonly NameDoubt[];
  readonly onDecided: () => void;
};

function SessionChecks({ sessionId, session, doubts, onDecided }: SessionChecksProps) {
  const name = session === undefined ? '' : `${session.traineeName}, ${day(session.date)}`;
  const texts = doubts.filter(({ kind }) => kind !== 'voice');
  const decide = async (places: readonly NameDoubt[], is: Verdict): Promise<void> => {
    const said = places.map(({ place, before, word, after }) => ({ place, before, word, after }));
    if ((await mutate('names.decide', { sessionId, places: said, is })) === null) return;
    const undo = async (): Promise<void> => {
      await mutate('history.undo', { sessionId });
      onDecided();
    };
    const sentence = sayNames(is === 'name' ? 'hidden' : 'kept', { count: places.length });
    statusState.getState().say(sentence, { doing: sayNames('undo'), run: () => void undo() });
    onDecided();
  };
  return (
    <>
      <header className="name-checks-head">
        <h3>{name}</h3>
        {texts.length > 1 && (
          <>
            <button
              type="button"
              className="quiet-button"
              aria-label={sayNames('hideAllOf', { count: texts.length, session: name })}
              onClick={() => void decide(texts, 'name')}
            >
              <EyeOff aria-hidden="true" /> {sayNames('hideAll', { count: texts.length })}
            </button>
            <button
              type="button"
              className="quiet-button"
              aria-label={sayNames('noneIsNameOf', { session: name })}
              onClick={() => void decide(texts, 'noName')}
            >
              <SpellCheck aria-hidden="true" /> {sayNames('noneIsName')}
            </button>
          </>
        )}
      </header>
      <ul aria-label={sayNames('ofSession', { session: name })}>
        {doubts.map((doubt) => (
          <li className="name-check" key={JSON.stringify([doubt.place, doubt.before, doubt.word, doubt.after])}>
            <Check sessionId={sessionId} doubt={doubt} onDecide={(is) => void decide([doubt], is)} />
          </li>
        ))}
      </ul>
    </>
  );
}

const idOf: Readonly<Record<NameDoubt['kind'], NamesMessageId>> = {
  title: 'inTitle',
  notes: 'inNotes',
  painNote: 'inPainNote',
  reason: 'inReason',
  entryReason: 'inReason',
  clipName: 'inClipName',
  drawnText: 'inDrawnText',
  note: 'inNote',
  cue: 'inCue',
  letter: 'inLetter',
  voice: 'inVoice',
};

const shownAround = 40;

type CheckProps = {
  readonly sessionId: string;
  readonly doubt: NameDoubt;
  readonly onDecide: (is: Verdict) => void;
};

/** One place: where it is, the words around it, and what can be done. */
function Check({ sessionId, doubt, onDecide }: CheckProps) {
  const { kind, clip, before, word, after } = doubt;
  const where = [sayNames(idOf[kind]), ...(clip === null ? [] : [clip.name])].join(' · ');
  const open = async (): Promise<void> => {
    if (clip !== null) await mutate('position.set', { sessionId, clipId: clip.id, frame: 0 });
    screenState.getState().go({ kind: kind === 'letter' ? 'letter' : 'review', sessionId });
  };
  if (kind === 'voice') {
    return (
      <>
        <p className="soft">{where}</p>
        <p>{sayNames('voiceWords')}</p>
        <div className="name-check-acts">
          <button
            type="button"
            aria-label={sayNames('notSaidIn', { clip: clip?.name ?? '' })}
            onClick={() => onDecide('noName')}
          >
            <SpellCheck aria-hidden="true" /> {sayNames('notSaid')}
          </button>
          <button type="button" className="quiet-button" onClick={() => void open()}>
            <Volume2 aria-hidden="true" /> {sayNames('listen')}
          </button>
        </div>
      </>
    );
  }
  return (
    <>
      <p className="soft">{where}</p>
      <p className="name-check-words" dir="auto">
        {before.length > shownAround ? `…${before.slice(-shownAround)}` : before}
        <mark>{word}</mark>
        {after.length > shownAround ? `${after.slice(0, shownAround)}…` : after}
      </p>
      <div className="name-check-acts">
        <button type="button" aria-label={sayNames('hideAt', { word, where })} onClick={() => onDecide('name')}>
          <EyeOff aria-hidden="true" /> {sayNames('hide')}
        </button>
        <button type="button" aria-label={sayNames('noNameAt', { word, where })} onClick={() => onDecide('noName')}>
          <SpellCheck aria-hidden="true" /> {sayNames('noName')}
        </button>
        <button
          type="button"
          className="quiet-button"
          aria-label={sayNames('editAt', { where })}
          onClick={() => void open()}
        >
          <Pencil aria-hidden="true" /> {sayNames('edit')}
        </button>
      </div>
    </>
  );
}
