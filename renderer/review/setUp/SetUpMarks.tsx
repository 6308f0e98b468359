import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import type { PointPx } from '../../../engine/recording/recording.ts';
import type { SetUp } from '../../../engine/recording/setUp.ts';
import { measuresState } from '../../state/clipState.ts';
import { saySetUp } from '../../words/saySetUp.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { setPoints, stepBackInSetUp } from '../commands/settingUp.ts';
import { LayerGroup } from '../layers/LayerGroup.tsx';
import { arrowSteps, asSeen } from '../model/arrows.ts';
import { setUpState } from '../state/pictureTools.ts';
import { usePlayhead } from '../state/playerState.ts';
import { setUpPointName } from './setUpTools.ts';

type SetUpMarksProps = { readonly clipId: string; readonly unit: number };

/** What was pointed out already, as lines over the frame on screen. */
function knownLines(setUp: SetUp, frame: number): readonly { readonly name: string; readonly points: PointPx[] }[] {
  const { knownLength, plumb, depthClicks, backClicks } = setUp;
  const depth = depthClicks.find((one) => one.frame === frame);
  const back = backClicks.find((one) => one.frame === frame);
  return [
    ...(knownLength === null ? [] : [{ name: saySetUp('length'), points: [knownLength.from, knownLength.to] }]),
    ...(plumb === null ? [] : [{ name: saySetUp('plumb'), points: [plumb.top, plumb.bottom] }]),
    ...(depth === undefined ? [] : [{ name: saySetUp('hipAndKneeLine'), points: [depth.hipCrease, depth.kneeTop] }]),
    ...(back === undefined ? [] : [{ name: saySetUp('back'), points: [...back.points] }]),
  ];
}

const lineThrough = (points: readonly PointPx[]): string =>
  points.map(({ xPx, yPx }, index) => `${index === 0 ? 'M' : 'L'}${xPx} ${yPx}`).join('');

/** Moves a draft point by keys: an arrow a pixel, with Shift ten. */
function nudge(nudged: number, by: PointPx): void {
  setUpState.setState(({ points }) => ({
    points: points.map((one, index) =>
      index === nudged ? { xPx: Math.max(0, one.xPx + by.xPx), yPx: Math.max(0, one.yPx + by.yPx) } : one,
    ),
  }));
}

/** The points of the measuring set-up over the picture: those that are set, and those being placed. */
export function SetUpMarks({ clipId, unit }: SetUpMarksProps) {
  const settingUp = setUpState((state) => state.settingUp);
  const setUp = measuresState((state) => (state.clipId === clipId ? (state.measures?.setUp ?? null) : null));
  const [frame, setFrame] = useState(0);
  usePlayhead((now) => {
    if (now.clipId === clipId && now.frame !== frame) setFrame(now.frame);
  });
  if (settingUp === 'off') return null;
  return (
    <>
      {setUp !== null &&
        knownLines(setUp, frame).map(({ name, points }) => (
          <LayerGroup key={name} name={name} testId="set-up-line">
            <path className="drawn-halo" d={lineThrough(points)} strokeWidth={5 * unit} />
            <path className="drawn-chalk" d={lineThrough(points)} strokeWidth={1.5 * unit} />
            {points.map(({ xPx, yPx }) => (
              <circle
                key={`${xPx} ${yPx}`}
                className="layer-joint"
                data-sight="seen"
                cx={xPx}
                cy={yPx}
                r={3 * unit}
                strokeWidth={unit}
              />
            ))}
          </LayerGroup>
        ))}
      <DraftPoints unit={unit} />
    </>
  );
}

/** The box that is being drawn round a disc, and the rim that fills it. */
function DraftBox({ points, unit }: { readonly points: readonly PointPx[]; readonly unit: number }) {
  const [one, other] = points;
  if (one === undefined || other === undefined) return null;
  const wide = Math.abs(one.xPx - other.xPx);
  const high = Math.abs(one.yPx - other.yPx);
  const box = { x: Math.min(one.xPx, other.xPx), y: Math.min(one.yPx, other.yPx), width: wide, height: high };
  const rim = { cx: box.x + wide / 2, cy: box.y + high / 2, rx: wide / 2, ry: high / 2 };
  return (
    <>
      <rect className="drawn-halo" {...box} strokeWidth={5 * unit} />
      <rect className="drawn-chalk" {...box} strokeWidth={1.5 * unit} />
      <ellipse className="drawn-chalk" {...rim} strokeWidth={1.5 * unit} />
    </>
  );
}

function DraftPoints({ unit }: { readonly unit: number }) {
  const context = useReview();
  const { tool, points, radiusPx, focusNext } = setUpState();
  const [middle] = points;
  const marks = useRef<(SVGElement | null)[]>([]);
  useEffect(() => {
    if (typeof focusNext !== 'number') return;
    marks.current[focusNext]?.focus({ preventScroll: true });
    setUpState.setState({ focusNext: null });
  }, [focusNext]);
  const onKeyDown = (event: KeyboardEvent, index: number): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const arrow = arrowSteps[event.key];
    const size = event.shiftKey ? 10 : 1;
    if (arrow !== undefined) {
      const { x, y } = asSeen(arrow, context.stage?.clip.framing?.mirrored === true);
      nudge(index, { xPx: x * size, yPx: y * size });
    } else if (event.key === 'Enter') void setPoints(context);
    else if (event.key === 'Escape') stepBackInSetUp(context);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <>
      {middle !== undefined && radiusPx !== null && (
        <>
          <circle className="drawn-halo" cx={middle.xPx} cy={middle.yPx} r={radiusPx} strokeWidth={5 * unit} />
          <circle className="drawn-chalk" cx={middle.xPx} cy={middle.yPx} r={radiusPx} strokeWidth={2 * unit} />
        </>
      )}
      {tool === 'discBox' && <DraftBox points={points} unit={unit} />}
      {tool !== 'discBox' && points.length > 1 && (
        <>
          <path className="drawn-halo" d={lineThrough(points)} strokeWidth={5 * unit} />
          <path className="drawn-chalk" d={lineThrough(points)} strokeWidth={1.5 * unit} />
        </>
      )}
      {points.map(({ xPx, yPx }, index) => (
        // biome-ignore lint/a11y/useSemanticElements: a point of a picture can't be an HTML button.
        <circle
          // biome-ignore lint/suspicious/noArrayIndexKey: a tool's points are told apart by their index alone.
          key={index}
          ref={(element) => {
            marks.current[index] = element;
          }}
          className="drawn-point"
          role="button"
          tabIndex={0}
          aria-label={saySetUp('pointAt', {
            point: setUpPointName(tool, index),
            x: Math.round(xPx),
            y: Math.round(yPx),
          })}
          data-set-up-point={index}
          cx={xPx}
          cy={yPx}
          r={6 * unit}
          strokeWidth={2 * unit}
          onKeyDown={(event) => onKeyDown(event, index)}
        />
      ))}
    </>
  );
}
