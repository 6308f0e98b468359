import type { Reply } from '../../contract/reply.ts';
import type { ScreenName } from '../../contract/requests.ts';

/** Whether the page may listen: only while a narration is being recorded, which is told by what the page asks of the backend. */
export type MicrophoneGate = {
  readonly isOpen: () => boolean;
  /** Looks at an answered question of the page. */
  readonly follow: (name: ScreenName, reply: Reply<unknown>) => void;
  /** The page is gone, or another one. */
  readonly shut: () => void;
};

/** A gate that is shut. */
export function microphoneGate(): MicrophoneGate {
  let open = false;
  return {
    isOpen: () => open,
    follow: (name, { ok }) => {
      if (name === 'narrations.begin') open = ok;
      // Whatever became of it: it is not being recorded any more.
      else if (name === 'narrations.keep' || name === 'narrations.remove') open = false;
      else if (name === 'narrations.append' && !ok) open = false;
    },
    shut: () => {
      open = false;
    },
  };
}

/** What the platform tells of a wish for camera or microphone. */
export type MediaWish = { readonly mediaTypes?: readonly string[]; readonly mediaType?: string };

/** Whether a wish is for sound alone. */
export function isForSoundAlone({ mediaTypes, mediaType }: MediaWish): boolean {
  if (mediaTypes !== undefined) return mediaTypes.length > 0 && mediaTypes.every((type) => type === 'audio');
  return mediaType === 'audio';
}
