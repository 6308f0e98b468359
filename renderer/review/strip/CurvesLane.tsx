import { memo, useMemo, useRef, useState } from 'react';
import type { Measured, RepMeasurement, SetMeasurement } from '../../../engine/motion/measurement.ts';
import type { Clip } from '../../../engine/review/review.ts';
import { frameEndUs, frameStartUs } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { sayDoubts } from '../../../engine/wording/sayOffered.ts';
import { decimal, figureWords, inSeconds, phaseNames, phaseWords } from '../../base/measureWords.ts';
import { clipClockOfSeconds } from '../../player/clipClock.ts';
import { deskLanguage } from '../../words/deskLanguage.ts';
import { sayStrip } from '../../words/sayStrip.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { inWindow, type StripWindow, shareOfFrame } from '../model/stripWindow.ts';
import { usePlayhead } from '../state/playerState.ts';
import { curvesOf, type PhaseStretch, phaseStretches } from './curveLines.ts';

type CurvesLaneProps = {
  readonly clip: Pick<Clip, 'id' | 'section'>;
  readonly measurement: SetMeasurement;
  readonly table: FrameTable;
  readonly window: StripWindow;
  /** The frame under a pointer. */
  readonly frameAt: (clientX: number) => number;
};

type Pointed = { readonly position: number; readonly words: string };

/** Height and speed of the load over the strip's own scale, with the phases of each rep behind them. */
export const CurvesLane = memo(Lane, (one, other) => {
  return (
    one.clip.id === other.clip.id &&
    one.clip.section?.from.frame === other.clip.section?.from.frame &&
    one.measurement === other.measurement &&
    one.table === other.table &&
    one.window === other.window
  );
});

function Lane({ clip, measurement, table, window, frameAt }: CurvesLaneProps) {
  const context = useReview();
  const line = useRef<HTMLDivElement>(null);
  const lane = useRef<HTMLDivElement>(null);
  const [pointed, setPointed] = useState<Pointed | null>(null);
  const { curves, reps, offered } = measurement;
  const clipS = (frameEndUs(table, table.ticks.length - 1) - frameStartUs(table, 0)) / 1_000_000;
  const lines = useMemo(
    () =>
      curvesOf(
        curves,
        table.ticks.map((_, frame) => shareOfFrame(table, frame)),
      ),
    [curves, table],
  );
  const stretches = useMemo(() => phaseStretches(reps, clipS), [reps, clipS]);
  usePlayhead((now) => {
    if (now.clipId !== clip.id || now.frame >= table.ticks.length || line.current === null) return;
    line.current.style.left = `${inWindow(window, shareOfFrame(table, now.frame)) * 100}%`;
  });
  const point = (clientX: number): void => {
    const box = lane.current?.getBoundingClientRect();
    if (box === undefined || box.width === 0) return;
    const position = (clientX - box.left) / box.width;
    setPointed({ position, words: wordsAt(measurement, frameAt(clientX), clipS) });
  };
  const length = window.to - window.from;
  return (
    <>
      <div
        ref={lane}
        className="curves-lane"
        data-testid="curves-lane"
        aria-hidden="true"
        onPointerDown={(event) => {
          context.player?.pause();
          context.player?.seekTo(frameAt(event.clientX));
        }}
        onPointerMove={(event) => point(event.clientX)}
        onPointerLeave={() => setPointed(null)}
      >
        <div className="curves-drawn">
          {stretches.map(({ rep, phase, from, to }) => (
            <span
              key={`${rep}-${phase}`}
              className="phase-stretch"
              data-phase={phase}
              style={{
                left: `${inWindow(window, from) * 100}%`,
                width: `${((to - from) / length) * 100}%`,
              }}
            />
          ))}
          {offered.map(({ index, startS, endS }) => (
            <span
              key={`offered-${index}`}
              className="offered-stretch"
              style={{
                left: `${inWindow(window, startS / clipS) * 100}%`,
                width: `${((endS - startS) / clipS / length) * 100}%`,
              }}
            />
          ))}
          <svg viewBox={`${window.from} 0 ${length} 1`} preserveAspectRatio="none" aria-hidden="true">
            <path className="curve-zero" d="M0 0.5H1" />
            <path className="curve-speed" d={lines.speed} />
            <path className="curve-height" d={lines.height} />
          </svg>
          <div ref={line} className="playhead" />
        </div>
        {pointed !== null && (
          <span
            className="curves-words"
            data-side={pointed.position > 0.5 ? 'left' : 'right'}
            style={{ left: `${pointed.position * 100}%` }}
          >
            {pointed.words}
          </span>
        )}
      </div>
      <PhaseList clip={clip} measurement={measurement} table={table} />
    </>
  );
}

function phaseAt({ rep, phase }: PhaseStretch, duration: Measured | null): string {
  const words = phaseWords(phase);
  if (duration === null) return sayStrip('phaseAt', { rep, phase: words });
  return sayStrip('phaseFor', { rep, phase: words, seconds: figureWords(inSeconds(duration)) });
}

/** What the curves say at a frame: "rep 2, concentric 1.20 ± 0.03 s; height 41.0 cm; speed 0.55 m/s". */
function wordsAt({ reps, curves, calibration }: SetMeasurement, frame: number, clipS: number): string {
  const seconds = curves.timesS[frame] ?? 0;
  const here = phaseStretches(reps, clipS).find(({ from, to }) => seconds >= from * clipS && seconds < to * clipS);
  const duration = reps.find(({ index }) => index === here?.rep)?.durationsS[here?.phase ?? 'eccentric'] ?? null;
  const [height, speed] = [curves.heightM[frame], curves.speedMps[frame]];
  const sure = calibration?.from === 'body' ? 'no' : 'yes';
  const parts = [
    here === undefined ? sayStrip('betweenReps') : phaseAt(here, duration),
    height == null ? '' : sayStrip('heightAt', { sure, centimetres: decimal(height * 100, sure === 'yes' ? 1 : 0) }),
    speed == null ? '' : sayStrip('speedAt', { sure, metresPerSecond: decimal(speed, sure === 'yes' ? 2 : 1) }),
    curves.positionPx[frame] == null ? sayStrip('notVisible') : '',
  ];
  return parts.filter((part) => part !== '').join('; ');
}

/** From when to when each phase of a rep lasts, in the order of a tempo. */
const spansOf = (phases: RepMeasurement['phases'], clockAt: (seconds: number) => string): string =>
  phaseNames
    .flatMap((phase) => {
      const span = phases[phase];
      if (span === null) return [];
      return [sayStrip('phaseSpan', { phase: phaseWords(phase), from: clockAt(span.startS), to: clockAt(span.endS) })];
    })
    .join(', ');

/** The same phases as text, for people who can't see the lane. */
function PhaseList({ clip, measurement, table }: Pick<CurvesLaneProps, 'clip' | 'measurement' | 'table'>) {
  const language = deskLanguage((state) => state.language);
  const clockAt = (seconds: number): string => clipClockOfSeconds(clip, table, seconds);
  return (
    <ul className="visually-hidden" aria-label={sayStrip('phases')}>
      {measurement.reps.map(({ index, phases }) => (
        <li key={index}>{sayStrip('repPhases', { rep: index, phases: spansOf(phases, clockAt) })}</li>
      ))}
      {measurement.offered.map((rep) => (
        <li key={`offered-${rep.index}`}>
          {sayStrip('notCounted', {
            from: clockAt(rep.startS),
            to: clockAt(rep.endS),
            doubts: sayDoubts(rep, language),
          })}
        </li>
      ))}
    </ul>
  );
}
