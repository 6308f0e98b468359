import { vi } from 'vitest';

export type FakeMicrophone = {
  /** What the page asked the system for. */
  readonly asked: readonly MediaStreamConstraints[];
  /** What its recorders were told, in order. */
  readonly told: readonly string[];
  /** Gives the page a second of what is said. */
  readonly say: () => void;
  readonly isOpen: () => boolean;
};

/** Puts a microphone on the page, or none, until globals are put back. Recorders give two bytes when they are stopped. */
export function fakeMicrophone(there: 'there' | 'missing' = 'there'): FakeMicrophone {
  const asked: MediaStreamConstraints[] = [];
  const told: string[] = [];
  let open = false;
  let running: FakeRecorder | null = null;
  const track = Object.assign(new EventTarget(), {
    stop: () => {
      open = false;
    },
  });
  class FakeRecorder extends EventTarget {
    state = 'inactive';
    start(): void {
      this.state = 'recording';
      running = this;
      told.push('start');
    }
    stop(): void {
      this.state = 'inactive';
      running = null;
      told.push('stop');
      this.give();
      this.dispatchEvent(new Event('stop'));
    }
    give(): void {
      this.dispatchEvent(Object.assign(new Event('dataavailable'), { data: new Blob([new Uint8Array([1, 2])]) }));
    }
  }
  vi.stubGlobal('MediaRecorder', FakeRecorder);
  vi.stubGlobal('navigator', {
    mediaDevices: {
      getUserMedia: async (wish: MediaStreamConstraints) => {
        asked.push(wish);
        if (there === 'missing') throw new Error('There is no microphone.');
        open = true;
        return { getAudioTracks: () => [track], getTracks: () => [track] };
      },
    },
  });
  return { asked, told, say: () => running?.give(), isOpen: () => open };
}
