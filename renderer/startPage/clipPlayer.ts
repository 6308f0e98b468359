import { inLanguage } from '../../engine/document/inLanguage.ts';
import { angleInTens } from '../../engine/handover/nearSide.ts';
import { type ClipData, clockAtUs, type PageWords, type Stretch } from '../../engine/handover/pageData.ts';
import { escapeCue } from '../../engine/notes/webVttFile.ts';
import { browserSeekUs, frameAtUs, frameStartUs } from '../../engine/time/frames.ts';
import { openOverlay } from './drawOverlay.ts';
import { markCurrent, noteFrom, slackS } from './noteList.ts';
import { connectOwnControls } from './ownControls.ts';
import { partOf } from './partsOfPage.ts';

/** A clip on the page with its player, whose buttons and boxes work. */
export type ClipPlayer = {
  readonly section: HTMLElement;
  readonly video: HTMLVideoElement;
  /** Jumps so many notes on (back, when negative), and moves the focus there. */
  readonly stepNote: (step: number) => void;
};

/** Brings a clip's section to life. */
export function openClip(clip: ClipData, words: PageWords): ClipPlayer {
  const { table, notes } = clip;
  const section = partOf<HTMLElement>(document, `#${clip.id}`);
  const video = partOf<HTMLVideoElement>(section, 'video');
  const readout = partOf(section, '.readout');
  const list = partOf<HTMLElement>(section, '.notes ol');
  const noteButtons = [...section.querySelectorAll<HTMLElement>('.note')];
  const drawFrame = openOverlay(partOf(section, '.overlay'), clip, words.angles);
  const { clock } = inLanguage(words.locale);
  const cues = addCues(video, { kind: 'captions', label: words.cues, stretches: clip.cues });
  addCues(video, { kind: 'chapters', label: words.reps, stretches: clip.reps });
  /** Where to seek once the player knows its clip, in seconds. */
  let pendingSeekS: number | null = null;
  /** The note that was jumped to; -1 = none. */
  let jumpedTo = -1;

  const frameAt = (atS: number) => frameAtUs(table, Math.round((atS + slackS) * 1e6));
  const nowS = () => pendingSeekS ?? video.currentTime;

  const show = (atS: number) => {
    const frame = frameAt(atS);
    drawFrame(frame);
    const degrees = clip.body?.[frame]?.deg ?? [];
    const angles = degrees.flatMap((deg, index) =>
      deg === null ? [] : [`${words.angles[index]} ${angleInTens(deg)}`],
    );
    readout.textContent = [clock(clockAtUs(clip, frameStartUs(table, frame))), ...angles].join(' · ');
    markCurrent(list, noteButtons, { notes, atS });
  };

  const seek = (atS: number) => {
    video.pause();
    if (video.readyState > 0) {
      pendingSeekS = null;
      video.currentTime = atS;
    } else {
      pendingSeekS = atS;
      video.preload = 'auto';
      video.load();
    }
    show(atS);
  };
  const seekFrame = (frame: number) => seek(browserSeekUs(table, frame) / 1e6);

  const jumpTo = (index: number) => {
    const note = notes[index];
    const button = noteButtons[index];
    if (note === undefined || button === undefined) return;
    jumpedTo = index;
    seek(note.seekS);
    bringIntoView(section, button);
  };
  const stepNote = (step: number) => {
    const atS = nowS();
    const frameStartS = frameStartUs(table, frameAt(atS)) / 1e6;
    const index = noteFrom(notes, { step, atS, frameStartS, jumpedTo });
    jumpTo(index);
    noteButtons[index]?.focus({ preventScroll: true });
  };
  const stepFrame = (step: number) => {
    const frame = frameAt(nowS()) + step;
    if (table.ticks[frame] !== undefined) seekFrame(frame);
  };

  connectPlayButton(partOf(section, '.play'), video, words);
  connectOwnControls(section, video);
  connectLayerBoxes(section, video, cues);
  for (const [index, button] of noteButtons.entries()) button.addEventListener('click', () => jumpTo(index));
  for (const button of section.querySelectorAll<HTMLElement>('.rep')) {
    const rep = clip.reps[Number(button.dataset.rep)];
    if (rep !== undefined) button.addEventListener('click', () => seekFrame(frameAt(rep.fromS)));
  }
  for (const button of section.querySelectorAll<HTMLElement>('[data-step]')) {
    const [kind, step] = (button.dataset.step ?? '').split(' ');
    button.addEventListener('click', () => (kind === 'note' ? stepNote(Number(step)) : stepFrame(Number(step))));
  }
  const rate = partOf<HTMLSelectElement>(section, '.rate');
  rate.addEventListener('change', () => {
    video.defaultPlaybackRate = Number(rate.value);
    video.playbackRate = Number(rate.value);
  });
  video.addEventListener('loadedmetadata', () => {
    if (pendingSeekS === null) return;
    video.currentTime = pendingSeekS;
    pendingSeekS = null;
  });
  showWhatPlays(video, show);
  show(0);
  return { section, video, stepNote };
}

function addCues(
  video: HTMLVideoElement,
  { kind, label, stretches }: { kind: 'captions' | 'chapters'; label: string; stretches: readonly Stretch[] },
): TextTrack {
  const track = video.addTextTrack(kind, label, document.documentElement.lang);
  for (const { fromS, toS, text } of stretches) track.addCue(new VTTCue(fromS, toS, escapeCue(text)));
  track.mode = 'hidden';
  return track;
}

/** Not every browser's player takes the Space key, so there is a button of our own. */
function connectPlayButton(button: HTMLElement, video: HTMLVideoElement, { play, pause }: PageWords): void {
  button.addEventListener('click', () => {
    if (!video.paused) return video.pause();
    // A jump breaks off playing that has just begun, which is no fault.
    video.play().catch(() => undefined);
  });
  for (const event of ['play', 'pause']) {
    video.addEventListener(event, () => {
      button.textContent = video.paused ? play : pause;
    });
  }
}

function connectLayerBoxes(section: HTMLElement, video: HTMLVideoElement, cues: TextTrack): void {
  for (const box of section.querySelectorAll<HTMLInputElement>('[data-layer]')) {
    const layer = box.dataset.layer ?? '';
    if (layer === 'cues') {
      box.addEventListener('change', () => {
        cues.mode = box.checked ? 'showing' : 'hidden';
      });
      // Players have a switch of their own for words over the picture.
      video.textTracks.addEventListener('change', () => {
        box.checked = cues.mode === 'showing';
      });
    } else {
      const drawn = partOf<SVGGElement>(section, `.overlay .${layer}`);
      box.addEventListener('change', () => {
        drawn.style.display = box.checked ? '' : 'none';
      });
    }
  }
}

/** Shows each frame that the player paints; where a browser doesn't tell of frames, several times a second. */
function showWhatPlays(video: HTMLVideoElement, show: (atS: number) => void): void {
  video.addEventListener('seeked', () => show(video.currentTime));
  if ('requestVideoFrameCallback' in HTMLVideoElement.prototype) {
    const onFrame = (_: number, { mediaTime }: { readonly mediaTime: number }) => {
      if (!video.paused) show(mediaTime);
      video.requestVideoFrameCallback(onFrame);
    };
    video.requestVideoFrameCallback(onFrame);
  } else {
    video.addEventListener('timeupdate', () => show(video.currentTime));
  }
}

/** Brings the picture and the note into view; on a narrow screen the picture stays there by itself. */
function bringIntoView(section: HTMLElement, button: HTMLElement): void {
  const behavior = matchMedia('(prefers-reduced-motion: reduce)').matches ? 'auto' : 'smooth';
  if (matchMedia('(max-width: 52rem)').matches) {
    button.scrollIntoView({ block: 'nearest', behavior });
  } else if (!isSeen(partOf(section, '.picture')) || !isSeen(button)) {
    section.scrollIntoView({ block: 'start', behavior });
  }
}

function isSeen(element: Element): boolean {
  const { top, bottom } = element.getBoundingClientRect();
  return top >= 0 && bottom <= innerHeight;
}
