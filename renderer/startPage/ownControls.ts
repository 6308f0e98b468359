import { partOf } from './partsOfPage.ts';

/**
 * Takes the browser's own controls off the picture, where they would lie over the notes in it, and connects those under it:
 * the place in the clip, a tap on the picture, full screen.
 */
export function connectOwnControls(section: HTMLElement, video: HTMLVideoElement): void {
  video.controls = false;
  video.addEventListener('click', () => partOf<HTMLElement>(section, '.play').click());
  connectPosition(partOf<HTMLInputElement>(section, '.position'), video);
  connectFullScreen(partOf<HTMLButtonElement>(section, '.full'), partOf(section, '.picture'), video);
}

function connectPosition(position: HTMLInputElement, video: HTMLVideoElement): void {
  const follow = () => {
    position.value = String(video.currentTime);
  };
  video.addEventListener('loadedmetadata', () => {
    position.max = String(video.duration);
    follow();
  });
  for (const event of ['timeupdate', 'seeked']) video.addEventListener(event, follow);
  position.addEventListener('input', () => {
    video.pause();
    video.currentTime = Number(position.value);
  });
}

/** What iPhones have instead of full screen for any element. */
type VideoWithOwnScreen = HTMLVideoElement & { readonly webkitEnterFullscreen: () => void };

const hasOwnScreen = (video: HTMLVideoElement): video is VideoWithOwnScreen =>
  'webkitEnterFullscreen' in video && typeof video.webkitEnterFullscreen === 'function';

function connectFullScreen(button: HTMLButtonElement, picture: Element, video: HTMLVideoElement): void {
  const canShow = document.fullscreenEnabled === true;
  button.hidden = !canShow && !hasOwnScreen(video);
  button.addEventListener('click', () => {
    // A browser may refuse; then the picture stays where it is.
    if (canShow) void picture.requestFullscreen().catch(() => undefined);
    else if (hasOwnScreen(video)) video.webkitEnterFullscreen();
  });
}
