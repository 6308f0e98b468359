import { drawingScript } from './drawingScript.ts';
import { timeScript } from './timeScript.ts';

/**
 * The page's script. It is data of the page, so it stands here as words; it reads what it needs from the element `data` and
 * finds everything else by class. Browsers of the last few years run it.
 */
export const indexScript = `
'use strict';
(() => {
  const { clips, words } = JSON.parse(document.getElementById('data').textContent);
  /** How long a note stays the current one after its moment, in seconds. */
  const staysS = 3;
  const calm = matchMedia('(prefers-reduced-motion: reduce)');
  const narrow = matchMedia('(max-width: 52rem)');

${timeScript}
${drawingScript}

  const openClip = (clip) => {
    const section = document.getElementById(clip.id);
    const video = section.querySelector('video');
    const picture = section.querySelector('.picture');
    const over = section.querySelector('.over');
    const readout = section.querySelector('.readout');
    const buttons = [...section.querySelectorAll('.note')];
    const list = section.querySelector('.notes ol');
    const { timesS, endS, notes } = clip;
    const ways = [
      ...(clip.way === null ? [] : [drawWay(over, clip.way)]),
      ...(clip.body === null ? [] : [drawBody(over, clip.body)]),
    ];
    const cues = addCues(video, 'captions', words.cues, clip.cues);
    addCues(video, 'chapters', words.reps, clip.reps);
    let wantedS = null;
    /** The note that was jumped to, until the clip moves on. */
    let chosen = -1;

    const middleOf = (frame) => (timesS[frame] + (timesS[frame + 1] ?? endS)) / 2;
    const nowS = () => wantedS ?? video.currentTime;

    const markNotes = (atS) => {
      const last = notes.findLastIndex((note) => note.atS <= atS + slack);
      const current = last >= 0 && atS < notes[last].atS + staysS ? notes[last].atS : null;
      buttons.forEach((button, index) => {
        const is = notes[index].atS === current;
        if (is === button.hasAttribute('aria-current')) return;
        if (!is) return button.removeAttribute('aria-current');
        button.setAttribute('aria-current', 'true');
        const item = button.parentElement;
        const below = item.offsetTop + item.offsetHeight - list.offsetTop - list.clientHeight;
        const above = item.offsetTop - list.offsetTop;
        if (list.scrollHeight <= list.clientHeight) return;
        if (above < list.scrollTop || below > list.scrollTop) list.scrollTop = above;
      });
    };

    const show = (atS) => {
      const frame = lastNotAfter(timesS, atS);
      for (const draw of ways) draw(frame);
      const deg = clip.body?.[frame]?.deg ?? [];
      const angles = deg.flatMap((value, at) => (value === null ? [] : [words.angles[at] + ' ' + inTens(value)]));
      readout.textContent = [clock(timesS[frame]), ...angles].join(' · ');
      markNotes(atS);
    };

    const seek = (atS) => {
      video.pause();
      if (video.readyState > 0) {
        wantedS = null;
        video.currentTime = atS;
      } else {
        wantedS = atS;
        video.preload = 'auto';
        video.load();
      }
      show(atS);
    };

    const isSeen = (element) => {
      const { top, bottom } = element.getBoundingClientRect();
      return top >= 0 && bottom <= innerHeight;
    };

    /** Brings the picture and the note into view; on a narrow screen the picture stays there by itself. */
    const bringIntoView = (button) => {
      const behavior = calm.matches ? 'auto' : 'smooth';
      if (narrow.matches) button.scrollIntoView({ block: 'nearest', behavior });
      else if (!isSeen(picture) || !isSeen(button)) section.scrollIntoView({ block: 'start', behavior });
    };

    const jumpTo = (index) => {
      const note = notes[index];
      if (note === undefined) return;
      chosen = index;
      seek(note.seekS);
      bringIntoView(buttons[index]);
    };

    const noteFrom = (step) => {
      const atS = nowS();
      if (chosen >= 0 && Math.abs(notes[chosen].seekS - atS) < 0.002) return chosen + step;
      if (step > 0) return notes.findIndex((note) => note.atS > atS + slack);
      return notes.findLastIndex((note) => note.atS < timesS[lastNotAfter(timesS, atS)] - slack);
    };

    const goTo = (step) => {
      const index = noteFrom(step);
      if (notes[index] === undefined) return;
      jumpTo(index);
      buttons[index].focus({ preventScroll: true });
    };

    const stepFrame = (step) => {
      const frame = lastNotAfter(timesS, nowS()) + step;
      if (timesS[frame] !== undefined) seek(middleOf(frame));
    };

    // Not every player of a browser takes the Space key. A jump breaks playing off, which is nothing to complain of.
    const playButton = section.querySelector('.play');
    playButton.addEventListener('click', () => (video.paused ? video.play().catch(() => {}) : video.pause()));
    for (const event of ['play', 'pause']) {
      video.addEventListener(event, () => {
        playButton.textContent = video.paused ? words.play : words.pause;
      });
    }
    buttons.forEach((button, index) => button.addEventListener('click', () => jumpTo(index)));
    for (const button of section.querySelectorAll('.rep')) {
      const rep = clip.reps[Number(button.dataset.rep)];
      button.addEventListener('click', () => seek(middleOf(lastNotAfter(timesS, rep.fromS))));
    }
    for (const button of section.querySelectorAll('[data-step]')) {
      const [kind, step] = button.dataset.step.split(' ');
      button.addEventListener('click', () => (kind === 'note' ? goTo(Number(step)) : stepFrame(Number(step))));
    }
    for (const box of section.querySelectorAll('[data-layer]')) {
      box.addEventListener('change', () => {
        if (box.dataset.layer === 'cues') cues.mode = box.checked ? 'showing' : 'hidden';
        else over.querySelector('.' + box.dataset.layer).style.display = box.checked ? '' : 'none';
      });
      // Players have a switch of their own for words over the picture.
      if (box.dataset.layer !== 'cues') continue;
      video.textTracks.addEventListener('change', () => {
        box.checked = cues.mode === 'showing';
      });
    }
    section.querySelector('.rate').addEventListener('change', ({ target }) => {
      video.defaultPlaybackRate = Number(target.value);
      video.playbackRate = Number(target.value);
    });

    video.addEventListener('loadedmetadata', () => {
      if (wantedS === null) return;
      video.currentTime = wantedS;
      wantedS = null;
    });
    video.addEventListener('seeked', () => show(video.currentTime));
    if ('requestVideoFrameCallback' in video) {
      const onFrame = (_, { mediaTime }) => {
        if (!video.paused) show(mediaTime);
        video.requestVideoFrameCallback(onFrame);
      };
      video.requestVideoFrameCallback(onFrame);
    } else {
      video.addEventListener('timeupdate', () => show(video.currentTime));
    }
    show(0);
    return { section, video, goTo };
  };

  const opened = clips.map(openClip);
  let active = opened[0];
  for (const clip of opened) {
    const choose = () => {
      active = clip;
    };
    for (const event of ['focusin', 'pointerdown']) clip.section.addEventListener(event, choose);
    clip.video.addEventListener('play', () => {
      choose();
      for (const other of opened) if (other !== clip) other.video.pause();
    });
  }

  const keysOn = document.querySelector('.keys input');
  addEventListener('keydown', (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || !keysOn?.checked || active === undefined) return;
    if (event.target instanceof HTMLSelectElement) return;
    const step = { n: 1, b: -1 }[event.key.toLowerCase()];
    if (step === undefined) return;
    event.preventDefault();
    active.goTo(step);
  });
  document.documentElement.classList.add('ready');
})();
`;

/** SHA-256 of the script in base64: the page's content policy lets this script run and no other. */
export const indexScriptHash = 'AJTdGA4a+GDzaJ5xupeIUIAoQVZf0cqoQ8TfSl2vRzs=';
