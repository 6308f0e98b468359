import { ArrowLeft, ChevronLeft, ChevronRight, Pause, Play } from 'lucide-react';
import { useEffect, useMemo, useRef, useState } from 'react';
import type { Result } from '../../electron/contract/requests.ts';
import { day, plain } from '../base/figures.ts';
import { read } from '../bridge/read.ts';
import { ScreenCommands, useCommandPanel } from '../commands/ScreenCommands.tsx';
import type { Player } from '../player/player.ts';
import { type PlayingContext, playingCommands, speeds } from '../player/playingCommands.ts';
import { samePhase } from '../player/repFrames.ts';
import { screenState } from '../state/screenState.ts';
import { sayCompare } from '../words/sayCompare.ts';
import { ComparePane, loadSide, type Side } from './ComparePane.tsx';

type CompareScreenProps = { readonly sessionId: string; readonly clipId: string; readonly rep: number | null };
type Alike = Result<'clips.alike'>;
/** null: it can't be shown, or has no reps. */
type NoSide = 'reading' | null;

const NotShown = ({ side, why }: { readonly side: NoSide; readonly why: string }) => (
  <p className="empty">{side === 'reading' ? sayCompare('reading') : why}</p>
);

/** Two clips of one exercise side by side: the right one is always at the phase of the left one. */
export function CompareScreen({ sessionId, clipId, rep }: CompareScreenProps) {
  const [alike, setAlike] = useState<Alike>([]);
  const [left, setLeft] = useState<Side | NoSide>('reading');
  const [right, setRight] = useState<Side | NoSide>('reading');
  const [speed, setSpeed] = useState(1);
  const [playing, setPlaying] = useState<PlayingContext['playing']>('no');
  const [panel, setPanel] = useCommandPanel();
  const players = useRef<{ left: Player | null; right: Player | null }>({ left: null, right: null });

  useEffect(() => {
    void loadSide(sessionId, clipId, rep).then(setLeft);
    void read('clips.alike', { clipId }).then((list) => {
      setAlike(list ?? []);
      // The session before is what people mean by "then and now"; without one, another rep of the same clip.
      const own = list?.find((one) => one.clipId === clipId);
      const other = list?.find((one) => own !== undefined && one.date < own.date) ?? own;
      if (other === undefined) return setRight(null);
      const anotherRep = other === own && (rep ?? 1) === 1 ? 2 : null;
      void loadSide(other.sessionId, other.clipId, anotherRep).then(setRight);
    });
  }, [sessionId, clipId, rep]);

  const follow = (frame: number): void => {
    if (left === null || left === 'reading' || right === null || right === 'reading') return;
    const to = samePhase(
      frame,
      { reps: left.clip.reps, index: left.rep, table: left.tables.table },
      { reps: right.clip.reps, index: right.rep, table: right.tables.table },
    );
    if (to !== null) players.current.right?.seekTo(to);
  };
  const latest = useRef({ playing, speed });
  latest.current = { playing, speed };
  const context = useMemo(
    (): PlayingContext => ({
      readOnly: false,
      setSpeed,
      get player() {
        return players.current.left;
      },
      get playing() {
        return latest.current.playing;
      },
      get speed() {
        return latest.current.speed;
      },
    }),
    [],
  );
  useEffect(() => players.current.left?.setSpeed(speed), [speed]);

  const called = ({ date, name, clipId: id }: Alike[number]): string =>
    sayCompare(id === clipId ? 'thisClip' : 'clip', { date: day(date), name });
  return (
    <>
      <header className="screen-head">
        <button
          type="button"
          className="quiet-button"
          onClick={() => screenState.getState().go({ kind: 'review', sessionId })}
        >
          <ArrowLeft aria-hidden="true" /> {sayCompare('review')}
        </button>
        <h1>{sayCompare('compare')}</h1>
        <span className="head-gap" />
        <label>
          {sayCompare('beside')}{' '}
          <select
            value={typeof right === 'object' ? (right?.clip.id ?? '') : ''}
            onChange={(event) => {
              const chosen = alike.find((one) => one.clipId === event.target.value);
              if (chosen !== undefined) void loadSide(chosen.sessionId, chosen.clipId, null).then(setRight);
            }}
          >
            {(right === null || right === 'reading') && <option value="">{sayCompare('chooseClip')}</option>}
            {alike.map((one) => (
              <option key={one.clipId} value={one.clipId}>
                {called(one)}
              </option>
            ))}
          </select>
        </label>
      </header>
      <main className="compare">
        <div className="compare-panes">
          {left === null || left === 'reading' ? (
            <NotShown side={left} why={sayCompare('leftNeedsReps')} />
          ) : (
            <ComparePane
              place="left"
              side={left}
              onPlayer={(player) => {
                players.current.left = player;
                player?.setSpeed(speed);
              }}
              onView={({ frame }) => follow(frame)}
              onPlaying={setPlaying}
              onRep={(index) => setLeft({ ...left, rep: index })}
            />
          )}
          {right === null || right === 'reading' ? (
            <NotShown side={right} why={sayCompare('rightNeedsReps')} />
          ) : (
            <ComparePane
              place="right"
              side={right}
              onPlayer={(player) => {
                players.current.right = player;
              }}
              onView={() => {}}
              onPlaying={() => {}}
              onRep={(index) => setRight({ ...right, rep: index })}
            />
          )}
        </div>
        <fieldset className="transport" aria-label={sayCompare('bothClips')}>
          <button type="button" className="play-button" onClick={() => players.current.left?.toggle()}>
            {playing === 'no' ? <Play aria-hidden="true" /> : <Pause aria-hidden="true" />}
            {sayCompare(playing === 'no' ? 'play' : 'pause')}
          </button>
          <button
            type="button"
            aria-label={sayCompare('frameBack')}
            onClick={() => players.current.left?.step(-1, 'pressed')}
          >
            <ChevronLeft aria-hidden="true" />
          </button>
          <button
            type="button"
            aria-label={sayCompare('frameOn')}
            onClick={() => players.current.left?.step(1, 'pressed')}
          >
            <ChevronRight aria-hidden="true" />
          </button>
          <label className="speed">
            <span>{sayCompare('speed')}</span>
            <select value={speed} onChange={(event) => setSpeed(Number(event.target.value))}>
              {speeds.map((known) => (
                <option key={known} value={known}>
                  {sayCompare('times', { speed: plain(known) })}
                </option>
              ))}
            </select>
          </label>
        </fieldset>
      </main>
      <ScreenCommands commands={playingCommands} context={context} sessionId={null} panel={panel} onPanel={setPanel} />
    </>
  );
}
