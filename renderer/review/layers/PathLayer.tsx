import { useMemo, useRef } from 'react';
import { type CameraMoves, ontoFirst, steadied } from '../../../engine/motion/camera/cameraPath.ts';
import { inverseOf } from '../../../engine/motion/camera/similarity.ts';
import { frameAtSeconds, type RepMeasurement, type SetMeasurement } from '../../../engine/motion/measurement.ts';
import type { CameraPath } from '../../../engine/recording/recording.ts';
import { sayLayers } from '../../words/sayLayers.ts';
import { gappedPath } from '../model/pictureGeometry.ts';
import { usePlayhead } from '../state/playerState.ts';
import { LayerGroup } from './LayerGroup.tsx';

type PathLayerProps = {
  readonly clipId: string;
  readonly measurement: SetMeasurement;
  readonly camera: CameraPath | null;
  /** Picture pixels that one pixel of the screen covers. */
  readonly unit: number;
};

type RepFrames = { readonly rep: RepMeasurement; readonly first: number; readonly last: number };

/** The load path over the picture: the rep on screen strong up to this frame, the others faint, a dot where the load is. */
export function PathLayer({ clipId, measurement, camera, unit }: PathLayerProps) {
  const { curves, reps } = measurement;
  const held = useRef<SVGGElement>(null);
  const strong = useRef<SVGGElement>(null);
  const dot = useRef<SVGCircleElement>(null);
  const points = useMemo(
    () => curves.positionPx.map((point, frame) => (point === null ? null : steadied(camera, frame, point))),
    [curves, camera],
  );
  const spans = useMemo(
    () =>
      reps.map((rep): RepFrames => {
        const [first, last] = [rep.startS, rep.endS].map((seconds) => frameAtSeconds(curves.timesS, seconds));
        return { rep, first: first ?? 0, last: last ?? 0 };
      }),
    [reps, curves],
  );
  const faint = useMemo(
    () => spans.map(({ first, last }) => gappedPath(points, first, last)).join(''),
    [spans, points],
  );
  usePlayhead((now) => {
    if (now.clipId !== clipId) return;
    held.current?.setAttribute('transform', overFrame(camera, now.frame));
    const span = spans.find(({ first, last }) => now.frame >= first && now.frame <= last);
    const data = span === undefined ? '' : gappedPath(points, span.first, now.frame);
    for (const path of strong.current?.querySelectorAll('path') ?? []) path.setAttribute('d', data);
    const point = points[now.frame];
    dot.current?.toggleAttribute('data-lost', point == null);
    if (point == null) return;
    dot.current?.setAttribute('cx', String(point.xPx));
    dot.current?.setAttribute('cy', String(point.yPx));
  });
  return (
    <LayerGroup group={held} name={sayLayers('path', { count: reps.length })} testId="path-layer">
      <path className="drawn-halo layer-faint" d={faint} strokeWidth={3 * unit} />
      <path
        className="drawn-chalk layer-faint"
        d={faint}
        strokeWidth={unit}
        strokeDasharray={`${4 * unit} ${3 * unit}`}
      />
      <g ref={strong}>
        <path className="drawn-halo" strokeWidth={6 * unit} />
        <path className="drawn-chalk" strokeWidth={3 * unit} />
      </g>
      <circle ref={dot} className="layer-dot" data-testid="path-dot" r={5 * unit} strokeWidth={2 * unit} />
    </LayerGroup>
  );
}

/** The SVG transform that lays points of the first frame over a later one. */
export function overFrame(camera: CameraMoves | null, frame: number): string {
  const { a, b, shiftXPx, shiftYPx } = inverseOf(ontoFirst(camera, frame));
  return `matrix(${a} ${b} ${-b} ${a} ${shiftXPx} ${shiftYPx})`;
}
