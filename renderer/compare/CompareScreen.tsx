import {
  ArrowLeft,
  FlipHorizontal,
  Link2,
  Maximize,
  Pause,
  Play,
  StepBack,
  StepForward,
  Timer,
  ZoomIn,
  ZoomOut,
} from 'lucide-react';
import { type ReactNode, useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { day, plain } from '../base/figures.ts';
import { read } from '../bridge/read.ts';
import { CommandButton } from '../commands/CommandButton.tsx';
import { availabilityOf, type Command, runCommand } from '../commands/command.ts';
import { ScreenCommands, useCommandPanel } from '../commands/ScreenCommands.tsx';
import type { Player, PlayerView } from '../player/player.ts';
import { frameBack, frameOn, type PlayingContext, play, playBackwards, speeds } from '../player/playingCommands.ts';
import { repFrames } from '../player/repFrames.ts';
import { catalogueState } from '../state/catalogueState.ts';
import { screenState } from '../state/screenState.ts';
import { sayCompare } from '../words/sayCompare.ts';
import { ComparePane } from './ComparePane.tsx';
import {
  bothCloser,
  bothFurther,
  bothWhole,
  type CompareContext,
  compareCommands,
  inStepOther,
  mirrorLeft,
  mirrorRight,
  zoomsTogether,
} from './compareCommands.ts';
import { compareDesk, type Place, resetCompareDesk } from './compareDesk.ts';
import { MonthsRow } from './MonthsRow.tsx';
import { newestOnly } from './newestOnly.ts';
import { type AlikeClip, frameInRep, frameInStep, loadSide, type Side } from './side.ts';
import { spreadOver } from './spreadOver.ts';

type CompareScreenProps = { readonly sessionId: string; readonly clipId: string; readonly rep: number | null };
/** null: it can't be shown, or has no reps. */
type NoSide = 'reading' | null;

const isSide = (side: Side | NoSide): side is Side => side !== null && side !== 'reading';
const nothing: readonly AlikeClip[] = [];
/** From so many clips on, they stand as small pictures in a row; and so many at most. */
const [fewest, most] = [3, 8];

/** Two clips of one exercise side by side: the right one is always at the phase, or the time, of the left one. */
export function CompareScreen({ sessionId, clipId, rep }: CompareScreenProps) {
  const [alike, setAlike] = useState(nothing);
  const [shown, setShown] = useState<Readonly<Record<Place, Side | NoSide>>>({ left: 'reading', right: 'reading' });
  const [rested, setRested] = useState(0);
  const [speed, setSpeed] = useState(1);
  const [playing, setPlaying] = useState<PlayingContext['playing']>('no');
  const [panel, setPanel] = useCommandPanel();
  const { inStep, together, mirrored } = compareDesk();
  const players = useRef<Record<Place, Player | null>>({ left: null, right: null });
  // What the pictures follow: it is set before anything is drawn.
  const sides = useRef(shown);
  const opensAt = useRef<number | null>(null);
  const put = useCallback((place: Place, side: Side | NoSide): void => {
    sides.current = { ...sides.current, [place]: side };
    setShown(sides.current);
  }, []);
  const loads = useMemo(
    () => ({
      left: newestOnly((side: Side | null) => put('left', side)),
      right: newestOnly((side: Side | null) => put('right', side)),
      alike: newestOnly((list: readonly AlikeClip[]) => setAlike(list)),
    }),
    [put],
  );

  useEffect(() => {
    resetCompareDesk();
    if (catalogueState.getState().catalogue === null) void catalogueState.getState().load();
  }, []);
  useEffect(() => {
    put('left', 'reading');
    put('right', 'reading');
    opensAt.current = null;
    loads.left.ask(loadSide(sessionId, clipId, rep));
    const list = read('clips.alike', { clipId }).then((answer) => answer ?? []);
    loads.alike.ask(list);
    loads.right.ask(
      list.then((clips) => {
        // The session before is what people mean by "then and now"; without one, another rep of the same clip.
        const own = clips.find((one) => one.clipId === clipId);
        const other = clips.find((one) => own !== undefined && one.date < own.date) ?? own;
        if (other === undefined) return null;
        const anotherRep = other === own && (rep ?? 1) === 1 ? 2 : null;
        return loadSide(other.sessionId, other.clipId, anotherRep);
      }),
    );
    return () => {
      for (const each of Object.values(loads)) each.stop();
    };
  }, [sessionId, clipId, rep, loads, put]);

  const follow = useCallback((frame: number): void => {
    const { left, right } = sides.current;
    if (!isSide(left) || !isSide(right)) return;
    const to = frameInStep(frame, left, right, compareDesk.getState().inStep);
    if (to !== null) players.current.right?.seekTo(to);
  }, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the right picture has its place anew with each way to be in step
  useEffect(() => {
    if (players.current.left !== null) follow(players.current.left.frame());
  }, [follow, inStep]);

  const choose = (place: Place, { sessionId: of, clipId: id }: AlikeClip): void => {
    const before = sides.current.left;
    const frame = players.current.left?.frame() ?? 0;
    loads[place].ask(
      loadSide(of, id, null).then((side) => {
        if (place === 'left' && side !== null && isSide(before))
          opensAt.current = frameInStep(frame, before, side, 'phase');
        return side;
      }),
    );
  };
  const chooseRep = (place: Place, index: number): void => {
    const side = sides.current[place];
    const player = players.current.left;
    if (!isSide(side) || player === null) return;
    const to = place === 'left' ? frameInRep(player.frame(), side, index) : null;
    put(place, { ...side, rep: index });
    if (to !== null) player.seekTo(to);
    else follow(player.frame());
  };
  const goTo = (place: Place, frame: number): void => {
    const { left, right } = sides.current;
    const to = place === 'left' || !isSide(left) || !isSide(right) ? frame : frameInStep(frame, right, left, inStep);
    if (to !== null) players.current.left?.seekTo(to);
  };
  const firstOf = ({ clip, rep: index, tables }: Side): number => repFrames(clip.reps, index, tables.table)?.first ?? 0;
  const openingOf = (place: Place, side: Side): number => {
    const { left } = sides.current;
    if (place === 'left') return opensAt.current ?? firstOf(side);
    if (!isSide(left)) return firstOf(side);
    return frameInStep(players.current.left?.frame() ?? firstOf(left), left, side, inStep) ?? firstOf(side);
  };
  const onView = ({ frame, settled }: PlayerView): void => {
    follow(frame);
    if (settled) setRested(frame);
  };

  const latest = useRef({ playing, speed, alike });
  latest.current = { playing, speed, alike };
  const chooseRef = useRef(choose);
  chooseRef.current = choose;
  const context = useMemo(
    (): CompareContext => ({
      readOnly: false,
      setSpeed,
      chooseRight: (step) => {
        const { right } = sides.current;
        const at = latest.current.alike.findIndex((one) => isSide(right) && one.clipId === right.clip.id);
        const next = latest.current.alike[at + step];
        if (at !== -1 && next !== undefined) chooseRef.current('right', next);
      },
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

  const { left, right } = shown;
  const rightId = isSide(right) ? right.clip.id : null;
  const row = useMemo(() => spreadOver([...alike].reverse(), most, [clipId, rightId ?? '']), [alike, clipId, rightId]);
  const called = ({ date, name, clipId: id }: AlikeClip): string =>
    sayCompare(id === clipId ? 'thisClip' : 'clip', { date: day(date), name });
  const button = (
    command: Command<CompareContext>,
    icon: ReactNode,
    words?: string,
    pressed?: boolean,
    name?: string,
  ) => (
    <CommandButton
      command={command}
      availability={availabilityOf(command, context)}
      onRun={() => runCommand(command, context)}
      shows={words === undefined ? 'icon' : 'words'}
      {...(words !== undefined && { words })}
      {...(pressed !== undefined && { pressed })}
      {...(name !== undefined && { name })}
    >
      {icon}
    </CommandButton>
  );
  const pane = (place: Place, side: Side | NoSide) =>
    isSide(side) ? (
      <ComparePane
        key={side.clip.id}
        place={place}
        side={side}
        opensAt={() => openingOf(place, side)}
        onPlayer={(player) => {
          players.current[place] = player;
          if (place === 'left') player?.setSpeed(speed);
        }}
        onView={place === 'left' ? onView : () => {}}
        onPlaying={place === 'left' ? setPlaying : () => {}}
        onRep={(index) => chooseRep(place, index)}
        onGo={(frame) => goTo(place, frame)}
      />
    ) : (
      <p className="empty">
        {side === 'reading' ? sayCompare('reading') : sayCompare(place === 'left' ? 'leftNeedsReps' : 'rightNeedsReps')}
      </p>
    );
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
            value={rightId ?? ''}
            onChange={(event) => {
              const chosen = alike.find((one) => one.clipId === event.target.value);
              if (chosen !== undefined) choose('right', chosen);
            }}
          >
            {rightId === null && <option value="">{sayCompare('chooseClip')}</option>}
            {alike.map((one) => (
              <option key={one.clipId} value={one.clipId}>
                {called(one)}
              </option>
            ))}
          </select>
        </label>
      </header>
      <main className="compare">
        {isSide(left) && row.length >= fewest && (
          <MonthsRow clips={row} left={left} rightId={rightId} frame={rested} onChoose={choose} />
        )}
        <div className="compare-panes">
          {pane('left', left)}
          {pane('right', right)}
        </div>
        <fieldset className="transport compare-transport" aria-label={sayCompare('bothClips')}>
          <button type="button" className="play-button" onClick={() => runCommand(play, context)}>
            {playing === 'no' ? <Play aria-hidden="true" /> : <Pause aria-hidden="true" />}
            {sayCompare(playing === 'no' ? 'play' : 'pause')}
          </button>
          {button(playBackwards, <Play className="play-backwards" aria-hidden="true" />)}
          {button(frameBack, <StepBack aria-hidden="true" />)}
          {button(frameOn, <StepForward aria-hidden="true" />)}
          {button(inStepOther, <Timer aria-hidden="true" />, sayCompare(inStep === 'phase' ? 'byPhase' : 'byTime'))}
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
          <span className="head-gap" />
          {button(
            mirrorLeft,
            <FlipHorizontal aria-hidden="true" />,
            sayCompare('left'),
            mirrored.left,
            sayCompare('mirrorOf', { side: sayCompare('left') }),
          )}
          {button(
            mirrorRight,
            <FlipHorizontal aria-hidden="true" />,
            sayCompare('right'),
            mirrored.right,
            sayCompare('mirrorOf', { side: sayCompare('right') }),
          )}
          {button(zoomsTogether, <Link2 aria-hidden="true" />, sayCompare('together'), together)}
          {button(bothFurther, <ZoomOut aria-hidden="true" />)}
          {button(bothCloser, <ZoomIn aria-hidden="true" />)}
          {button(bothWhole, <Maximize aria-hidden="true" />)}
        </fieldset>
      </main>
      <ScreenCommands commands={compareCommands} context={context} sessionId={null} panel={panel} onPanel={setPanel} />
    </>
  );
}
