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

/** Drawing on the picture: the tool, what is selected, and what is under way. */
export const drawingState = create<DrawingState>()(() => off);

/** Puts the tools away; what was under way is let go. */
export const stopDrawing = (): void => drawingState.setState(off);
