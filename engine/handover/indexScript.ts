/**
 * The page's script. It is data of the page, so it stands here as words; it reads what it needs from the element `data` and
 * finds everything else by class. Browsers of the last few years run it.
 */
export const indexScript = `
'use strict';
(() => {
  const { clips, words } = JSON.parse(document.getElementById('data').textContent);
  /** Half a millisecond: times of frames come rounded from some browsers. */
  const slack = 0.0005;
  /** How long a note stays the current one after its moment, in seconds. */
  const staysS = 3;
  const calm = matchMedia('(prefers-reduced-motion: reduce)');

  const lastNotAfter = (list, atS) => {
    let [low, high] = [0, list.length - 1];
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if (list[middle] <= atS + slack) low = middle;
      else high = middle - 1;
    }
    return low;
  };

  const clock = (atS) => {
    const ms = Math.round(atS * 1000);
    const two = (value) => String(Math.floor(value)).padStart(2, '0');
    return Math.floor(ms / 60000) + ':' + two((ms / 1000) % 60) + words.decimal + String(ms % 1000).padStart(3, '0');
  };

  const inTens = (deg) => Math.round(deg / 10) * 10 + '°';

  /** The line through points, with a gap where one is missing. */
  const line = (points) => {
    let [d, begun] = ['', false];
    for (const point of points) {
      d += point === null ? '' : (begun ? 'L' : 'M') + point[0] + ' ' + point[1];
      begun = point !== null;
    }
    return d;
  };

  const escapeCue = (text) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

  const addCues = (video, kind, label, stretches) => {
    const track = video.addTextTrack(kind, label, document.documentElement.lang);
    for (const { fromS, toS, text } of stretches) track.addCue(new VTTCue(fromS, toS, escapeCue(text)));
    track.mode = kind === 'chapters' ? 'hidden' : 'showing';
    return track;
  };

  const drawWay = (over, { reps, places, laid }) => {
    const group = over.querySelector('.way');
    const now = group.querySelector('.now');
    return (frame) => {
      const rep = reps.findLast(([first, last]) => frame >= first && frame <= last);
      const whole = rep === undefined ? [] : places.slice(rep[0], rep[1] + 1);
      const gone = rep === undefined ? [] : places.slice(rep[0], frame + 1);
      for (const path of group.querySelectorAll('.whole')) path.setAttribute('d', line(whole));
      for (const path of group.querySelectorAll('.gone')) path.setAttribute('d', line(gone));
      const place = places[frame] ?? null;
      now.setAttribute('visibility', place === null ? 'hidden' : 'inherit');
      if (place !== null) {
        now.setAttribute('cx', place[0]);
        now.setAttribute('cy', place[1]);
      }
      const matrix = laid?.[frame];
      if (matrix) group.setAttribute('transform', 'matrix(' + matrix.join(' ') + ')');
    };
  };

  const drawBody = (over, body) => {
    const group = over.querySelector('.body');
    const dots = [...group.querySelectorAll('circle')];
    const labels = [...group.querySelectorAll('text')];
    return (frame) => {
      const seen = body[frame] ?? null;
      group.setAttribute('visibility', seen === null ? 'hidden' : 'inherit');
      if (seen === null) return;
      for (const path of group.querySelectorAll('path')) path.setAttribute('d', line(seen.joints));
      dots.forEach((dot, joint) => {
        const place = seen.joints[joint];
        dot.setAttribute('visibility', place === null ? 'hidden' : 'inherit');
        if (place === null) return;
        dot.setAttribute('cx', place[0]);
        dot.setAttribute('cy', place[1]);
      });
      labels.forEach((label, angle) => {
        const [place, deg] = [seen.joints[angle === 0 ? 2 : 1], seen.deg[angle]];
        const shows = place !== null && deg !== null;
        label.setAttribute('visibility', shows ? 'inherit' : 'hidden');
        if (!shows) return;
        label.setAttribute('x', place[0] + Number(label.dataset.beside));
        label.setAttribute('y', place[1]);
        label.textContent = words.angles[angle] + ' ' + inTens(deg);
      });
    };
  };

  const openClip = (clip) => {
    const section = document.getElementById(clip.id);
    const video = section.querySelector('video');
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

    const jumpTo = (index) => {
      const note = notes[index];
      if (note === undefined) return;
      chosen = index;
      seek(note.seekS);
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
      buttons[index].scrollIntoView({ block: 'nearest', behavior: calm.matches ? 'auto' : 'smooth' });
    };

    const stepFrame = (step) => {
      const frame = lastNotAfter(timesS, nowS()) + step;
      if (timesS[frame] !== undefined) seek(middleOf(frame));
    };

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
export const indexScriptHash = 'kT3XlEh8dx8WxlQVRMKmL920Klx74Qq8McekOHpsFVg=';
