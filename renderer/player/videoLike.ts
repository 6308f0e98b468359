/** What the player needs of a `<video>`; a test can stand in for it. */
export type VideoLike = {
  currentTime: number;
  playbackRate: number;
  readonly paused: boolean;
  readonly seeking: boolean;
  readonly play: () => Promise<void>;
  readonly pause: () => void;
  readonly requestVideoFrameCallback: (
    callback: (now: number, metadata: { readonly mediaTime: number }) => void,
  ) => number;
  readonly cancelVideoFrameCallback: (handle: number) => void;
  readonly addEventListener: (type: 'seeked' | 'ended' | 'error', listener: () => void) => void;
  readonly removeEventListener: (type: 'seeked' | 'ended' | 'error', listener: () => void) => void;
};

/** A decoded frame, to be drawn over the video and closed. */
export type Picture = { readonly draw: () => void; readonly close: () => void };

/** Decodes the frames from `first` up to and with `last`; those it could not are missing. */
export type FrameSource = (first: number, last: number) => Promise<ReadonlyMap<number, Picture>>;

/** Draws the frame to be seen at a media time over the video; false when it can't. */
export type StillPicture = (atSeconds: number) => Promise<boolean>;
