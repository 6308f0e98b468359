import { type LoadPath, type PathPoint, spanAt } from '../../engine/handover/loadPath.ts';
import { angleInTens, nearSideAngles, nearSideJoints } from '../../engine/handover/nearSide.ts';
import type { BodyOfFrame, ClipData } from '../../engine/handover/pageData.ts';
import { partOf } from './partsOfPage.ts';

type DrawFrame = (frame: number) => void;

/** Returns a function that draws the load's path and the lifter's near side over one frame of a clip. */
export function openOverlay(overlay: SVGSVGElement, clip: ClipData, angleWords: readonly string[]): DrawFrame {
  const layers = [
    ...(clip.loadPath === null ? [] : [openLoadPath(partOf(overlay, '.load-path'), clip.loadPath)]),
    ...(clip.body === null ? [] : [openBody(partOf(overlay, '.body'), clip.body, angleWords)]),
  ];
  return (frame) => {
    for (const draw of layers) draw(frame);
  };
}

/** The line through points as the data of an SVG path, with a gap where one is missing. */
function lineThrough(points: readonly PathPoint[]): string {
  return points
    .map((point, index) => point && `${(points[index - 1] ?? null) === null ? 'M' : 'L'}${point[0]} ${point[1]}`)
    .filter((step) => step !== null)
    .join('');
}

function setLine(group: SVGGElement, selector: string, points: readonly PathPoint[]): void {
  for (const path of group.querySelectorAll(selector)) path.setAttribute('d', lineThrough(points));
}

function setDot(dot: SVGCircleElement, point: PathPoint): void {
  dot.setAttribute('visibility', point === null ? 'hidden' : 'inherit');
  if (point === null) return;
  dot.setAttribute('cx', String(point[0]));
  dot.setAttribute('cy', String(point[1]));
}

function openLoadPath(group: SVGGElement, { reps, points, ontoFrame }: LoadPath): DrawFrame {
  const now = partOf<SVGCircleElement>(group, '.now');
  return (frame) => {
    const [first, last] = spanAt(reps, frame) ?? [0, -1];
    setLine(group, '.whole', points.slice(first, last + 1));
    setLine(group, '.done', points.slice(first, Math.min(last, frame) + 1));
    setDot(now, points[frame] ?? null);
    const matrix = ontoFrame?.[frame];
    if (matrix !== undefined) group.setAttribute('transform', `matrix(${matrix.join(' ')})`);
  };
}

function openBody(
  group: SVGGElement,
  frames: readonly (BodyOfFrame | null)[],
  angleWords: readonly string[],
): DrawFrame {
  const dots = [...group.querySelectorAll('circle')];
  const labels = [...group.querySelectorAll('text')];
  const drawLabel = (label: SVGTextElement, index: number, { joints, deg }: BodyOfFrame) => {
    const joint = nearSideAngles[index]?.beside;
    const point = joint === undefined ? null : (joints[nearSideJoints.indexOf(joint)] ?? null);
    const degrees = deg[index] ?? null;
    label.setAttribute('visibility', point === null || degrees === null ? 'hidden' : 'inherit');
    if (point === null || degrees === null) return;
    label.setAttribute('x', String(point[0] + Number(label.dataset.beside)));
    label.setAttribute('y', String(point[1]));
    label.textContent = `${angleWords[index]} ${angleInTens(degrees)}`;
  };
  return (frame) => {
    const body = frames[frame] ?? null;
    group.setAttribute('visibility', body === null ? 'hidden' : 'inherit');
    if (body === null) return;
    setLine(group, 'path', body.joints);
    for (const [index, dot] of dots.entries()) setDot(dot, body.joints[index] ?? null);
    for (const [index, label] of labels.entries()) drawLabel(label, index, body);
  };
}
