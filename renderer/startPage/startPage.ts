import { type ClipPlayer, openClip } from './clipPlayer.ts';
import { readPageData } from './partsOfPage.ts';

const stepOfKey: Readonly<Record<string, number>> = { n: 1, b: -1 };

/** Plays one clip at a time; gives the one that was used last. */
function followActive(players: readonly ClipPlayer[]): () => ClipPlayer | undefined {
  let active = players[0];
  for (const player of players) {
    const choose = () => {
      active = player;
    };
    for (const event of ['focusin', 'pointerdown']) player.section.addEventListener(event, choose);
    player.video.addEventListener('play', () => {
      choose();
      for (const other of players) if (other !== player) other.video.pause();
    });
  }
  return () => active;
}

function listenToKeys(activePlayer: () => ClipPlayer | undefined): void {
  const keysOn = document.querySelector<HTMLInputElement>('.keys input');
  addEventListener('keydown', (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || keysOn?.checked !== true) return;
    if (event.target instanceof HTMLSelectElement) return;
    const player = activePlayer();
    const step = stepOfKey[event.key.toLowerCase()];
    if (step === undefined || player === undefined) return;
    event.preventDefault();
    player.stepNote(step);
  });
}

const { clips, words } = readPageData();
listenToKeys(followActive(clips.map((clip) => openClip(clip, words))));
document.documentElement.classList.add('ready');
