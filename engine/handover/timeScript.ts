/** The part of the page's script that knows of time: frames, clocks, the notes as the player's own words. */
export const timeScript = `  /** Half a millisecond: times of frames come rounded from some browsers. */
  const slack = 0.0005;

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

  const escapeCue = (text) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

  const addCues = (video, kind, label, stretches) => {
    const track = video.addTextTrack(kind, label, document.documentElement.lang);
    for (const { fromS, toS, text } of stretches) track.addCue(new VTTCue(fromS, toS, escapeCue(text)));
    track.mode = 'hidden';
    return track;
  };
`;
