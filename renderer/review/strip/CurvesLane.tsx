import { memo, useMemo, useRef, useState } from 'react';
import type { SetMeasurement } from '../../../engine/motion/measurement.ts';
import { frameEndUs, frameStartUs } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { formatClock } from '../../../engine/time/writtenTime.ts';
import { sayDoubts } from '../../../engine/wording/sayOffered.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { decimal, figureWords, inSeconds, phaseWords } from '../model/measureWords.ts';
import { inWindow, type StripWindow, shareOfFrame } from '../model/stripWindow.ts';
import { usePlayhead } from '../state/playerState.ts';
import { curvesOf, phaseStretches } from './curveLines.ts';

type CurvesLaneProps = {
  readonly clipId: string;
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
    one.clipId === other.clipId &&
    one.measurement === other.measurement &&
    one.table === other.table &&
    one.window === other.window
  );
});

function Lane({ clipId, measurement, table, window, frameAt }: CurvesLaneProps) {
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
    if (now.clipId !== clipId || now.frame >= table.ticks.length || line.current === null) return;
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
        <span className="curves-legend" data-curve-begins={lines.begins}>
          <span className="legend-height">height</span> <span className="legend-speed">speed</span>
        </span>
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
      <PhaseList measurement={measurement} />
    </>
  );
}

/** What the curves say at a frame: "rep 2, concentric 1.20 ± 0.03 s; height 41.0 cm; speed 0.55 m/s". */
function wordsAt({ reps, curves, calibration }: SetMeasurement, frame: number, clipS: number): string {
  const seconds = curves.timesS[frame] ?? 0;
  const here = phaseStretches(reps, clipS).find(({ from, to }) => seconds >= from * clipS && seconds < to * clipS);
  const duration = reps.find(({ index }) => index === here?.rep)?.durationsS[here?.phase ?? 'eccentric'] ?? null;
  const [height, speed] = [curves.heightM[frame], curves.speedMps[frame]];
  const about = calibration?.from === 'body' ? 'about ' : '';
  const parts = [
    here === undefined
      ? 'between reps'
      : `rep ${here.rep}, ${phaseWords[here.phase]}${duration === null ? '' : ` ${figureWords(inSeconds(duration))} s`}`,
    height == null ? '' : `height ${about}${decimal(height * 100, about === '' ? 1 : 0)} cm`,
    speed == null ? '' : `speed ${about}${decimal(speed, about === '' ? 2 : 1)} m/s`,
    curves.positionPx[frame] == null ? 'not seen' : '',
  ];
  return parts.filter((part) => part !== '').join('; ');
}

/** The same phases as text, for people who can't see the lane. */
function PhaseList({ measurement }: { readonly measurement: SetMeasurement }) {
  const clock = (seconds: number): string => formatClock(Math.round(seconds * 1_000_000));
  return (
    <ul className="visually-hidden" aria-label="Phases of each rep">
      {measurement.reps.map(({ index, phases }) => (
        <li key={index}>
          {`Rep ${index}: `}
          {(['eccentric', 'pauseStretched', 'concentric', 'pauseShortened'] as const)
            .flatMap((phase) => {
              const span = phases[phase];
              return span === null ? [] : [`${phaseWords[phase]} from ${clock(span.startS)} to ${clock(span.endS)}`];
            })
            .join(', ')}
        </li>
      ))}
      {measurement.offered.map((rep) => (
        <li key={`offered-${rep.index}`}>
          {`Not counted, from ${clock(rep.startS)} to ${clock(rep.endS)}: ${sayDoubts(rep, 'en')}`}
        </li>
      ))}
    </ul>
  );
}
