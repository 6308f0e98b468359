import { ALL_FORMATS, Input, UrlSource, VideoSampleSink } from 'mediabunny';
import type { FrameStream } from './follower.ts';
import type { ClipTimes, FrameSource, Picture, StillPicture } from './videoLike.ts';

/** Draws frames of a clip on a canvas with the browser's own decoder, for frames that no seek reaches. */
export type StillPainter = {
  readonly draw: StillPicture;
  readonly source: FrameSource;
  readonly stream: FrameStream;
  readonly dispose: () => void;
};

/** Opens the clip only when the first frame is asked for. */
export function createStillPainter(address: string, canvas: HTMLCanvasElement, times: ClipTimes): StillPainter {
  let input: Input | null = null;
  let sink: Promise<VideoSampleSink | null> | null = null;

  async function openSink(): Promise<VideoSampleSink | null> {
    input = new Input({ source: new UrlSource(address), formats: ALL_FORMATS });
    const track = await input.getPrimaryVideoTrack();
    return track === null || !(await track.canDecode()) ? null : new VideoSampleSink(track);
  }

  function sized(width: number, height: number): CanvasRenderingContext2D | null {
    if (canvas.width !== width) canvas.width = width;
    if (canvas.height !== height) canvas.height = height;
    return canvas.getContext('2d');
  }

  async function draw(atSeconds: number): Promise<boolean> {
    try {
      sink ??= openSink();
      const sample = await (await sink)?.getSample(atSeconds);
      if (!sample) return false;
      const context = sized(sample.displayWidth, sample.displayHeight);
      if (context !== null) sample.draw(context, 0, 0);
      sample.close();
      return context !== null;
    } catch {
      return false;
    }
  }

  const pictureOf = (bitmap: ImageBitmap): Picture => ({
    draw: () => sized(bitmap.width, bitmap.height)?.drawImage(bitmap, 0, 0),
    close: () => bitmap.close(),
  });

  async function source(first: number, last: number): Promise<ReadonlyMap<number, Picture>> {
    sink ??= openSink();
    const opened = await sink;
    const pictures = new Map<number, Picture>();
    if (opened === null) return pictures;
    const half = new OffscreenCanvas(1, 1);
    for await (const sample of opened.samples(times.seekSeconds(first), times.seekSeconds(last) + 1e-6)) {
      half.width = sample.displayWidth;
      half.height = sample.displayHeight;
      const context = half.getContext('2d');
      if (context !== null) {
        sample.draw(context, 0, 0);
        pictures.set(times.frameShownAt(sample.timestamp), pictureOf(half.transferToImageBitmap()));
      }
      sample.close();
    }
    return pictures;
  }

  const stream: FrameStream = async function* (first) {
    sink ??= openSink();
    const opened = await sink;
    if (opened === null) return;
    const half = new OffscreenCanvas(1, 1);
    for await (const sample of opened.samples(times.seekSeconds(first))) {
      const take = (): Picture | null => {
        half.width = sample.displayWidth;
        half.height = sample.displayHeight;
        const context = half.getContext('2d');
        if (context !== null) sample.draw(context, 0, 0);
        sample.close();
        return context === null ? null : pictureOf(half.transferToImageBitmap());
      };
      yield { frame: times.frameShownAt(sample.timestamp), take, skip: () => sample.close() };
    }
  };

  return { draw, source, stream, dispose: () => input?.dispose() };
}
