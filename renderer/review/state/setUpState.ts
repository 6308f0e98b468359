import { create } from 'zustand';
import type { PointPx } from '../../../engine/recording/recording.ts';

/** What can be pointed out on the picture, in the order of the tools. */
export const setUpTools = ['disc', 'point', 'length', 'plumb', 'depth', 'back'] as const;
export type SetUpTool = (typeof setUpTools)[number];

/** How many points each tool sets. */
export const pointsWanted: Readonly<Record<SetUpTool, number>> = {
  disc: 1,
  point: 1,
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

const off = { settingUp: 'off', points: [], radiusPx: null, focusNext: null } as const;

/** Pointing out what measuring can't find: the chosen tool, and the points being placed. */
export const setUpState = create<SetUpState>()(() => ({ ...off, tool: 'disc', lengthM: 1 }));

/** Ends the set-up; points that were not set are dropped. */
export const stopSettingUp = (): void => setUpState.setState(off);
