import type { Picture } from './videoLike.ts';

/** A frame as a decoder gives it: to be taken or skipped, once. */
export type DecodedFrame = { readonly frame: number; readonly take: () => Picture | null; readonly skip: () => void };

/** Decodes frames from one on, in their order. */
export type FrameStream = (first: number) => AsyncGenerator<DecodedFrame, void, void>;

/** Says what is to be on screen, while the player follows. */
export type Script = {
  /** The frame to be on screen now; null = it is over. */
  readonly due: () => number | null;
  /** The frames to come, the one due first, each once. */
  readonly ahead: () => readonly number[];
  /** `waiting`: the frame that is due is not decoded yet, so time should stand. */
  readonly onPace: (pace: 'waiting' | 'going') => void;
};

type FollowerOptions = {
  readonly stream: FrameStream;
  readonly everyRefresh: (run: () => void) => () => void;
  readonly onFrame: (frame: number) => void;
  /** The script is over, or a frame can't be had. */
  readonly onEnd: () => void;
};

export type Follower = { readonly start: (script: Script) => void; readonly stop: () => void };

/** Decoding on over so many frames is quicker than beginning anew at another. */
const decodesOnOver = 60;
/** Where the picture goes backwards, decoding begins so many frames before. */
const beginsBefore = 16;

/**
 * Shows frames in any order, each at its time: those to come are decoded ahead, and when one is late, time stands until it is there, so that no
 * frame is ever left out.
 */
export function createFollower({ stream, everyRefresh, onFrame, onEnd }: FollowerOptions): Follower {
  const pictures = new Map<number, Picture>();
  let run = 0;
  let callOff = (): void => {};
  let wake = (): void => {};

  function clear(): void {
    run += 1;
    callOff();
    wake();
    for (const picture of pictures.values()) picture.close();
    pictures.clear();
  }

  function keepOnly(wanted: ReadonlySet<number>): void {
    for (const [frame, picture] of pictures) {
      if (wanted.has(frame)) continue;
      picture.close();
      pictures.delete(frame);
    }
  }

  /** Decodes what is to come until the run is over. Throws where a frame can't be had. */
  async function decode(mine: number, script: Script): Promise<void> {
    let open: AsyncGenerator<DecodedFrame, void, void> | null = null;
    let at = -1;
    try {
      while (mine === run) {
        const missing = script.ahead().filter((frame) => !pictures.has(frame));
        const [next] = missing;
        if (next === undefined) {
          await new Promise<void>((resolve) => {
            wake = resolve;
          });
          continue;
        }
        if (open === null || next <= at || next - at > decodesOnOver) {
          await open?.return();
          const first = Math.min(...missing.filter((frame) => frame <= next && next - frame < beginsBefore));
          open = stream(first);
          at = first - 1;
        }
        const decoded: IteratorResult<DecodedFrame, void> = await open.next();
        if (decoded.done) throw new Error('The clip ended before a frame that was shown.');
        const { frame, take, skip } = decoded.value;
        at = frame;
        const picture = mine === run && missing.includes(frame) ? take() : null;
        if (picture === null) skip();
        else pictures.set(frame, picture);
      }
    } finally {
      await open?.return();
    }
  }

  return {
    start: (script) => {
      clear();
      const mine = run;
      let shown: number | null = null;
      let pace: 'waiting' | 'going' = 'going';
      const setPace = (next: typeof pace): void => {
        if (pace === next) return;
        pace = next;
        script.onPace(next);
      };
      const finish = (): void => {
        if (mine !== run) return;
        clear();
        onEnd();
      };
      // What is decoded already is shown to its end.
      let cutOff = false;
      decode(mine, script).catch(() => {
        cutOff = true;
      });
      callOff = everyRefresh(() => {
        const due = script.due();
        if (due === null) return finish();
        if (due === shown) return setPace('going');
        const picture = pictures.get(due);
        // Time goes on at the next refresh, once this frame is on screen.
        if (picture === undefined && cutOff) return finish();
        if (picture === undefined) setPace('waiting');
        if (picture !== undefined) {
          picture.draw();
          shown = due;
          onFrame(due);
        }
        keepOnly(new Set(script.ahead()));
        wake();
      });
    },
    stop: clear,
  };
}
