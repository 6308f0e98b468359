/** What a recorder gives, in the order it was said. `partLastsUs`: how long the part lasts by then. */
export type Spoken = { readonly part: number; readonly partLastsUs: number; readonly sound: Uint8Array };

export type VoiceRecorder = {
  /** Goes on recording: what follows is a part of its own. */
  readonly begin: () => void;
  /** Stops recording; resolves when everything that was said has been given. */
  readonly end: () => Promise<void>;
  /** The time of the sound that is being recorded, in microseconds: without the pauses. */
  readonly nowUs: () => number;
  /** Lets go of the microphone. */
  readonly close: () => void;
};

type RecorderOptions = {
  readonly now: () => number;
  readonly onSpoken: (spoken: Spoken) => void;
  /** The microphone was unplugged, or the browser can't go on. */
  readonly onLost: () => void;
};

/** As Chromium writes it; nothing else is asked for. */
const soundType = 'audio/webm;codecs=opus';
const bitsPerSecond = 48_000;
/** What a crash may lose. */
const pieceMs = 1_000;

/**
 * Asks for the microphone and makes a recorder on it. Rejects where there is none, or where it may not be used.
 *
 * The sound's clock is that of `now` since `begin`: measured in the stock runtime, the first sample is heard 2 to 12 ms before that call (its own `start` event
 * comes 60 ms late), and each `pause` of a `MediaRecorder` would add up to 50 ms. So each part is a recording of its own.
 */
export async function openVoiceRecorder({ now, onSpoken, onLost }: RecorderOptions): Promise<VoiceRecorder> {
  const stream = await navigator.mediaDevices.getUserMedia({ audio: { channelCount: 1 }, video: false });
  let recorder: MediaRecorder | null = null;
  let part = -1;
  let beganMs = 0;
  let beforeUs = 0;
  let given: Promise<void> = Promise.resolve();
  const partUs = (): number => Math.max(0, Math.round((now() - beganMs) * 1_000));

  for (const track of stream.getAudioTracks()) track.addEventListener('ended', () => recorder !== null && onLost());

  function begin(): void {
    if (recorder !== null) return;
    const mine = new MediaRecorder(stream, { mimeType: soundType, audioBitsPerSecond: bitsPerSecond });
    part += 1;
    const number = part;
    mine.addEventListener('dataavailable', ({ data }) => {
      const partLastsUs = mine.state === 'inactive' ? endedUs : partUs();
      given = given.then(async () => {
        onSpoken({ part: number, partLastsUs, sound: new Uint8Array(await data.arrayBuffer()) });
      });
    });
    mine.addEventListener('error', onLost);
    beganMs = now();
    mine.start(pieceMs);
    recorder = mine;
  }
  let endedUs = 0;

  async function end(): Promise<void> {
    const mine = recorder;
    if (mine === null) return;
    recorder = null;
    endedUs = partUs();
    beforeUs += endedUs;
    if (mine.state !== 'inactive') {
      await new Promise((resolve) => {
        mine.addEventListener('stop', resolve, { once: true });
        mine.stop();
      });
    }
    await given;
  }

  return {
    begin,
    end,
    nowUs: () => beforeUs + (recorder === null ? 0 : partUs()),
    close: () => {
      for (const track of stream.getTracks()) track.stop();
    },
  };
}
