/** The part of the page's script that draws over the picture: the way of the load, the lines of the body with their angles. */
export const drawingScript = `  const inTens = (deg) => Math.round(deg / 10) * 10 + '°';

  /** The line through points, with a gap where one is missing. */
  const line = (points) => {
    let [d, begun] = ['', false];
    for (const point of points) {
      d += point === null ? '' : (begun ? 'L' : 'M') + point[0] + ' ' + point[1];
      begun = point !== null;
    }
    return d;
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
`;
