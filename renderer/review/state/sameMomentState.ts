import { create } from 'zustand';

/** The moment of a clip that a person pointed out, to be shown in another clip of the same set next; null while none is. */
export const sameMomentState = create<{
  readonly marked: { readonly clipId: string; readonly frame: number } | null;
}>()(() => ({ marked: null }));
