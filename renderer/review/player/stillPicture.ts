import { ALL_FORMATS, Input, UrlSource, VideoSampleSink } from 'mediabunny';
import type { StillPicture } from './videoLike.ts';

/** Draws single frames of a clip on a canvas with the browser's own decoder, for what no seek can reach. */
export type StillPainter = { readonly draw: StillPicture; readonly dispose: () => void };

/** Opens the clip only when the first frame is asked for. */
export function createStillPainter(address: string, canvas: HTMLCanvasElement): StillPainter {
  let input: Input | null = null;
  let sink: Promise<VideoSampleSink | null> | null = null;

  async function openSink(): Promise<VideoSampleSink | null> {
    input = new Input({ source: new UrlSource(address), formats: ALL_FORMATS });
    const track = await input.getPrimaryVideoTrack();
    return track === null || !(await track.canDecode()) ? null : new VideoSampleSink(track);
  }

  async function draw(atSeconds: number): Promise<boolean> {
    try {
      sink ??= openSink();
      const sample = await (await sink)?.getSample(atSeconds);
      if (!sample) return false;
      canvas.width = sample.displayWidth;
      canvas.height = sample.displayHeight;
      const context = canvas.getContext('2d');
      if (context === null) {
        sample.close();
        return false;
      }
      sample.draw(context, 0, 0);
      sample.close();
      return true;
    } catch {
      return false;
    }
  }

  return { draw, dispose: () => input?.dispose() };
}
