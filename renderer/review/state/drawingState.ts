import { create } from 'zustand';
import type { DrawingShape, Drawn, Point } from '../../../engine/review/drawings/drawing.ts';

export type DrawTool = 'select' | DrawingShape;

/** A shape that is not in the library yet: one being drawn, or a drawing being moved. */
export type OpenShape = { readonly drawingId: string | null; readonly drawn: Drawn };

/** Words being written: of a new text, or of one that is there. */
export type Writing = { readonly drawingId: string | null; readonly at: Point; readonly words: string };

type DrawingState = {
  /** Whether the picture is drawn on now. */
  readonly drawing: 'on' | 'off';
  readonly tool: DrawTool;
  readonly selectedId: string | null;
  readonly open: OpenShape | null;
  readonly writing: Writing | null;
  /** What the focus goes to as soon as it is on the page. */
  readonly focusNext: 'tools' | 'drawing' | null;
};

const off = {
  drawing: 'off',
  tool: 'select',
  selectedId: null,
  open: null,
  writing: null,
  focusNext: null,
} as const;

/** Drawing on the picture: the tool, the selected drawing, and the shape being drawn or moved. */
export const drawingState = create<DrawingState>()(() => off);

/** Ends drawing; a half-drawn shape is dropped. */
export const stopDrawing = (): void => drawingState.setState(off);
