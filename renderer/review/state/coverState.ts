import { create } from 'zustand';
import type { Box } from '../../../engine/covers/cover.ts';

/** A box that is not in the library yet: a new one being drawn (`coverId` null), or a cover being moved at a frame. */
export type OpenBox = { readonly coverId: string | null; readonly frame: number; readonly box: Box };

type CoverState = {
  /** Whether the picture is covered now. */
  readonly covering: 'on' | 'off';
  readonly selectedId: string | null;
  readonly open: OpenBox | null;
  /** What the focus goes to as soon as it is on the page. */
  readonly focusNext: 'tools' | 'cover' | null;
};

const off = { covering: 'off', selectedId: null, open: null, focusNext: null } as const;

/** Covering faces and places: the selected cover, and the box being drawn or moved. */
export const coverState = create<CoverState>()(() => off);

/** Ends covering; a half-drawn box is dropped. */
export const stopCovering = (): void => coverState.setState(off);
