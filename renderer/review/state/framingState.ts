import { create } from 'zustand';
import type { Crop } from '../../../engine/framing/framing.ts';

type FramingState = {
  /** Whether the picture is being framed now: then all of it shows, with what is cut off shaded. */
  readonly framing: 'on' | 'off';
  /** The part being drawn, and not in the library yet. */
  readonly open: Crop | null;
  /** How bright the picture shows while the slider is held; null = as it is kept. */
  readonly brightness: number | null;
  /** What the focus goes to as soon as it is on the page. */
  readonly focusNext: 'tools' | null;
};

const notFraming = { framing: 'off', open: null, brightness: null, focusNext: null } as const;

/** Framing a clip's picture, and cutting its footage. */
export const framingState = create<FramingState>()(() => notFraming);

/** Ends framing; what was only begun is dropped. */
export const stopFraming = (): void => framingState.setState(notFraming);
