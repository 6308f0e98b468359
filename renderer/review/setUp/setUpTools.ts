import type { PointPx } from '../../../engine/recording/recording.ts';
import type { Size } from '../model/pictureGeometry.ts';
import type { SetUpTool } from '../state/pictureTools.ts';

export const setUpToolNames: Readonly<Record<SetUpTool, string>> = {
  disc: 'Disc',
  discBox: 'Box round the disc',
  point: 'Point to follow',
  lifter: 'Lifter',
  length: 'Known length',
  plumb: 'Upright',
  depth: 'Hip and knee',
  back: 'Back',
};

/** The name of each of a tool's points. */
export const setUpPointNames: Readonly<Record<SetUpTool, readonly string[]>> = {
  disc: ['Middle of the disc'],
  discBox: ['One corner of the box', 'Opposite corner of the box'],
  point: ['Point to follow'],
  lifter: ['Trunk of the lifter'],
  length: ['One end of the length', 'Other end of the length'],
  plumb: ['Top of the upright', 'Foot of the upright'],
  depth: ['Hip crease', 'Top of the knee'],
  back: ['Seat', 'Middle of the back', 'Shoulders'],
};

/** What to do with each tool, by pointer and by key. */
export const setUpHints: Readonly<Record<SetUpTool, string>> = {
  disc: 'Click the near disc in this frame; drag from its middle to its rim where that fails. It is followed again from here.',
  discBox:
    'Where the disc is turned or partly hidden, drag a box round it, from corner to corner. It is followed again from here.',
  point: 'Click what moves with the load: a dumbbell’s head, a handle. It is followed from here, both ways.',
  lifter: 'If the wrong person is followed, click the lifter’s trunk. The lifter’s joints are looked for again.',
  length: 'Click both ends of a length that you know, as far from the camera as the bar.',
  plumb: 'Click the top and the foot of something upright in the room, such as a rack’s post.',
  depth: 'Click the hip crease, then the top of the knee, in the lowest frame of a rep.',
  back: 'Click seat, middle of the back, shoulders: once at the set-up, once where the back looks different.',
};

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
