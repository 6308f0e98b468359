import type { Drawing, DrawingShape, Drawn } from '../../../engine/review/drawings/drawing.ts';
import { angleDeg } from '../../../engine/review/drawings/geometry.ts';
import type { DrawTool } from '../state/drawingState.ts';

/** The shapes in the order of the tools. */
export const shapeNames: Readonly<Record<DrawingShape, string>> = {
  line: 'Line',
  angle: 'Angle',
  plumb: 'Plumb',
  circle: 'Circle',
  stroke: 'Free stroke',
  text: 'Text',
};

export const tools: readonly DrawTool[] = ['select', 'line', 'angle', 'plumb', 'circle', 'stroke', 'text'];

export const toolName = (tool: DrawTool): string => (tool === 'select' ? 'Select' : shapeNames[tool]);

/** An angle in whole degrees, "87°"; '' while an arm has no length. */
export function degreesWords(drawn: Drawn): string {
  const degrees = drawn.shape === 'angle' ? angleDeg(...drawn.points) : null;
  return degrees === null ? '' : `${Math.round(degrees)}°`;
}

/** What a drawing is, for the list and for people who can't see it: "Angle 87°, drawing 2". */
export function drawingWords(drawing: Drawing, index: number): string {
  const detail = drawing.shape === 'text' ? `“${drawing.text}”` : degreesWords(drawing);
  return `${[shapeNames[drawing.shape], detail].filter((part) => part !== '').join(' ')}, drawing ${index + 1}`;
}

/** The name of one of a shape's points. */
export function pointName(shape: DrawingShape, index: number): string {
  if (shape === 'angle') return ['End of one arm', 'Apex', 'End of the other arm'][index] ?? '';
  if (shape === 'circle') return index === 0 ? 'Middle' : 'Rim';
  return index === 0 ? 'First end' : 'Second end';
}
