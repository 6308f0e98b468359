import { angleInTens, type NearSide, nearSideJoints } from '../../../../../engine/handover/nearSide.ts';
import type { Point } from '../../../../../engine/review/drawings/drawing.ts';
import type { AngleWords } from '../picture.ts';
import { casedWords, dot, ink, strokeCased, traceGapped } from './ink.ts';
import type { Pen } from './painter.ts';

/** Draws the lifter's near side from shoulder to ankle, with the bend of the knee and the lean of the trunk. */
export function drawNearSide(pen: Pen, body: NearSide, { unit, words }: NearSideLook): void {
  const { hip, knee } = body;
  const chain = nearSideJoints.map((joint) => body[joint]);
  strokeCased(pen, { widthPx: 1.5 * unit, colour: ink.chalk }, () => traceGapped(pen, chain));
  for (const joint of chain) if (joint !== null) dot(pen, joint, 3 * unit, ink.chalk);
  const beside = (text: string, { x, y }: Point) =>
    casedWords(pen, text, { at: { x: x + 10 * unit, y }, sizePx: 15 * unit, align: 'left' });
  if (knee !== null && body.kneeDeg !== null) beside(`${words.knee} ${angleInTens(body.kneeDeg)}`, knee);
  if (hip !== null && body.trunkLeanDeg !== null) beside(`${words.trunk} ${angleInTens(body.trunkLeanDeg)}`, hip);
}

export type NearSideLook = { readonly unit: number; readonly words: AngleWords };

/** Room that the words take beside the joints, in pixels. */
export const nearSideRoom = (unit: number): number => 150 * unit;
