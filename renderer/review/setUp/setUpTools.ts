import type { PointPx } from '../../../engine/recording/recording.ts';
import type { SetUpMessageId } from '../../../engine/wording/english/desk/setUp.ts';
import { saySetUp } from '../../words/saySetUp.ts';
import type { Size } from '../model/pictureGeometry.ts';
import type { SetUpTool } from '../state/pictureTools.ts';

/** The names of the tools, the hints to them, and the names of each one's points. */
const toolWords = {
  disc: { name: 'disc', hint: 'discHint', points: ['discPoint'] },
  discBox: { name: 'discBox', hint: 'discBoxHint', points: ['boxCorner', 'boxOpposite'] },
  point: { name: 'pointToFollow', hint: 'pointHint', points: ['pointToFollow'] },
  lifter: { name: 'lifter', hint: 'lifterHint', points: ['trunk'] },
  length: { name: 'length', hint: 'lengthHint', points: ['lengthEnd', 'lengthOtherEnd'] },
  plumb: { name: 'plumb', hint: 'plumbHint', points: ['plumbTop', 'plumbFoot'] },
  depth: { name: 'depth', hint: 'depthHint', points: ['hipCrease', 'kneeTop'] },
  back: { name: 'back', hint: 'backHint', points: ['seat', 'midBack', 'shoulders'] },
} as const satisfies Readonly<
  Record<SetUpTool, { name: SetUpMessageId; hint: SetUpMessageId; points: readonly SetUpMessageId[] }>
>;

export const setUpToolName = (tool: SetUpTool): string => saySetUp(toolWords[tool].name);

/** What to do with a tool, by pointer and by key. */
export const setUpHint = (tool: SetUpTool): string => saySetUp(toolWords[tool].hint);

/** The name of one of a tool's points; '' where it has no such point. */
export function setUpPointName(tool: SetUpTool, index: number): string {
  const points: readonly SetUpMessageId[] = toolWords[tool].points;
  const id = points[index];
  return id === undefined ? '' : saySetUp(id);
}

/** Where a tool's points begin, to be moved by keys. */
export function usualPoints(tool: SetUpTool, { width, height }: Size): readonly PointPx[] {
  const middle = { xPx: Math.round(width / 2), yPx: Math.round(height / 2) };
  const arm = Math.round(Math.min(width, height) / 6);
  const beside = (byX: number, byY: number): PointPx => ({ xPx: middle.xPx + byX, yPx: middle.yPx + byY });
  switch (tool) {
    case 'disc':
    case 'point':
    case 'lifter':
      return [middle];
    case 'discBox':
      return [beside(-arm, -arm), beside(arm, arm)];
    case 'length':
      return [beside(-arm, 0), beside(arm, 0)];
    case 'plumb':
      return [beside(0, -2 * arm), beside(0, 2 * arm)];
    case 'depth':
      return [beside(-arm, 0), beside(arm, 0)];
    case 'back':
      return [beside(-arm, arm), middle, beside(arm, -arm)];
  }
}
