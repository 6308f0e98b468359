import { create } from 'zustand';
import type { Box } from '../../../engine/covers/cover.ts';
import type { PointPx } from '../../../engine/recording/recording.ts';
import type { DrawingShape, Drawn, Point } from '../../../engine/review/drawings/drawing.ts';

export type DrawTool = 'select' | DrawingShape;

/** A shape that is not in the library yet: one being drawn, or a drawing being moved. */
type OpenShape = { readonly drawingId: string | null; readonly drawn: Drawn };

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

const notDrawing = {
  drawing: 'off',
  tool: 'select',
  selectedId: null,
  open: null,
  writing: null,
  focusNext: null,
} as const;

/** Drawing on the picture: the tool, the selected drawing, and the shape being drawn or moved. */
export const drawingState = create<DrawingState>()(() => notDrawing);

/** Ends drawing; a half-drawn shape is dropped. */
export const stopDrawing = (): void => drawingState.setState(notDrawing);

/** A box that is not in the library yet: a new one being drawn (`coverId` null), or a cover being moved at a frame. */
type OpenBox = { readonly coverId: string | null; readonly frame: number; readonly box: Box };

type CoverState = {
  /** Whether the picture is covered now. */
  readonly covering: 'on' | 'off';
  readonly selectedId: string | null;
  readonly open: OpenBox | null;
  /** What the focus goes to as soon as it is on the page. */
  readonly focusNext: 'tools' | 'cover' | null;
};

const notCovering = { covering: 'off', selectedId: null, open: null, focusNext: null } as const;

/** Covering faces and places: the selected cover, and the box being drawn or moved. */
export const coverState = create<CoverState>()(() => notCovering);

/** Ends covering; a half-drawn box is dropped. */
export const stopCovering = (): void => coverState.setState(notCovering);

/** What can be pointed out on the picture, in the order of the tools. */
export const setUpTools = ['disc', 'discBox', 'point', 'lifter', 'length', 'plumb', 'depth', 'back'] as const;
export type SetUpTool = (typeof setUpTools)[number];

/** How many points each tool sets. */
export const pointsWanted: Readonly<Record<SetUpTool, number>> = {
  disc: 1,
  discBox: 2,
  point: 1,
  lifter: 1,
  length: 2,
  plumb: 2,
  depth: 2,
  back: 3,
};

type SetUpState = {
  readonly settingUp: 'on' | 'off';
  readonly tool: SetUpTool;
  /** Points placed so far with the tool. */
  readonly points: readonly PointPx[];
  /** Radius of a disc that is being drawn out from its middle. */
  readonly radiusPx: number | null;
  /** The length that the next known length has, in metres. */
  readonly lengthM: number;
  /** What the focus goes to as soon as it is on the page. */
  readonly focusNext: 'tools' | number | null;
};

const notSettingUp = { settingUp: 'off', points: [], radiusPx: null, focusNext: null } as const;

/** Pointing out what measuring can't find: the chosen tool, and the points being placed. */
export const setUpState = create<SetUpState>()(() => ({ ...notSettingUp, tool: 'disc', lengthM: 1 }));

/** Ends the set-up; points that were not set are dropped. */
export const stopSettingUp = (): void => setUpState.setState(notSettingUp);
