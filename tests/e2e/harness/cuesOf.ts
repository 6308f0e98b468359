/** A cue as a browser read it. */
export type Cue = { readonly id: string; readonly startS: number; readonly endS: number; readonly text: string };

/** Runs in a page: lets the browser read WebVTT. */
export async function cuesOf(text: string): Promise<Cue[]> {
  const video = document.createElement('video');
  const track = document.createElement('track');
  track.src = URL.createObjectURL(new Blob([text], { type: 'text/vtt' }));
  track.default = true;
  video.append(track);
  document.body.append(video);
  await new Promise((resolve, reject) => {
    track.addEventListener('load', resolve);
    track.addEventListener('error', () => reject(new Error('The browser refused the WebVTT.')));
    track.track.mode = 'hidden';
  });
  return [...(track.track.cues ?? [])].map((cue) => ({
    id: cue.id,
    startS: cue.startTime,
    endS: cue.endTime,
    text: 'text' in cue ? String(cue.text) : '',
  }));
}
