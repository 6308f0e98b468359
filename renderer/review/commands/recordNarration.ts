import { asFilmed } from '../../../engine/framing/framing.ts';
import { seenPart } from '../../../engine/framing/picturePlaces.ts';
import { longestNarrationUs, type NarratedLayer, narratedLayers } from '../../../engine/narration/narration.ts';
import { drawnOf, showsAt } from '../../../engine/review/drawings/drawing.ts';
import { later } from '../../base/later.ts';
import { mutate } from '../../bridge/mutate.ts';
import { rackside } from '../../bridge/rackside.ts';
import { statusState } from '../../bridge/statusState.ts';
import { openVoiceRecorder, type VoiceRecorder } from '../../player/voiceRecorder.ts';
import { reviewState } from '../../state/reviewState.ts';
import { sayNarration } from '../../words/sayNarration.ts';
import { sayProblem } from '../../words/sayProblem.ts';
import { nearnessOf } from '../model/nearness.ts';
import { type OnScreen, type TrackWriter, trackWriter } from '../model/trackWriter.ts';
import { narrationState, readNarration, stopNarrating } from '../state/narrationState.ts';
import { drawingState } from '../state/pictureTools.ts';
import { playhead } from '../state/playerState.ts';
import { layersState, zoomState } from '../state/viewState.ts';
import type { ReviewContext } from './reviewContext.ts';

/** A narration that is being recorded. */
type Recording = {
  readonly narrationId: string;
  readonly clipId: string;
  readonly voice: VoiceRecorder;
  readonly track: TrackWriter;
  /** Notes what is on screen now. */
  readonly look: () => void;
  readonly stopLooking: () => void;
  /** Resolves when every piece so far is on disk. */
  readonly sent: () => Promise<void>;
};

let current: Recording | null = null;

/** What is on screen of the clip on the stage. */
function onScreen(context: ReviewContext): OnScreen | null {
  const { stage, data } = context;
  const table = stage?.tables?.table;
  const media = data?.media.find(({ clipId }) => clipId === stage?.clip.id);
  const { frame, clipId } = playhead.getState();
  if (stage === null || table === undefined || media === undefined || clipId !== stage.clip.id) return null;
  const { zoom, stage: size } = zoomState.getState();
  const { open } = drawingState.getState();
  const drawings = (stage.clip.drawings ?? []).filter((drawing) => showsAt(drawing, frame, table));
  const kept = drawings.map((drawing) => (open?.drawingId === drawing.id ? open.drawn : drawnOf(drawing)));
  return {
    frame,
    near: nearnessOf(zoom, size, seenPart(media, stage.clip.framing ?? asFilmed)),
    drawn: open !== null && open.drawingId === null ? [...kept, open.drawn] : kept,
    layers: visibleLayers(),
  };
}

const visibleLayers = (): readonly NarratedLayer[] => {
  const { hidden } = layersState.getState();
  return narratedLayers.filter((layer) => !hidden.includes(layer));
};

/** Begins to record: the library first, so that there is a place for the voice; then the microphone. */
export async function beginRecording(context: ReviewContext): Promise<void> {
  const clipId = context.stage?.clip.id;
  if (clipId === undefined || current !== null) return;
  narrationState.setState({ phase: 'asking', elapsedUs: 0 });
  const begun = await mutate('narrations.begin', { clipId });
  if (begun === null) return stopNarrating();
  const { narrationId } = begun;
  let sending: Promise<void> = Promise.resolve();
  const track = trackWriter();
  try {
    const voice = await openVoiceRecorder({
      now: () => performance.now(),
      onLost: () => void endRecording(),
      onSpoken: (spoken) => {
        const shown = track.take();
        sending = sending.then(() => append({ narrationId, ...spoken, shown }));
      },
    });
    const look = (): void => {
      const shown = onScreen(context);
      if (shown === null || narrationState.getState().phase !== 'recording') return;
      track.note(voice.nowUs(), shown);
    };
    const stops = [playhead, zoomState, layersState, drawingState, reviewState].map((each) => each.subscribe(look));
    const stopLooking = (): void => {
      for (const stop of stops) stop();
    };
    current = { narrationId, clipId, voice, track, look, stopLooking, sent: () => sending };
    resumeRecording();
    context.focus.backOnCard();
  } catch {
    await mutate('narrations.remove', { narrationId });
    stopNarrating();
    statusState.getState().tell(sayNarration('noMicrophone'));
  }
}

async function append(piece: Parameters<typeof send>[0]): Promise<void> {
  const reply = await send(piece);
  if (reply.ok || current?.narrationId !== piece.narrationId) return;
  statusState.getState().tell(sayProblem(reply.problem));
  void endRecording();
}

const send = (piece: {
  readonly narrationId: string;
  readonly part: number;
  readonly partLastsUs: number;
  readonly sound: Uint8Array;
  readonly shown: ReturnType<TrackWriter['take']>;
}) => rackside().ask('narrations.append', { ...piece, sound: new Uint8Array(piece.sound) });

let callOffTick = (): void => {};

/** Shows how long it lasts by now, and ends it in time. */
function tick(): void {
  if (current === null || narrationState.getState().phase !== 'recording') return;
  const elapsedUs = current.voice.nowUs();
  narrationState.setState({ elapsedUs });
  if (elapsedUs >= longestNarrationUs - 2_000_000) void endRecording();
  else callOffTick = later(250, tick);
}

/** Goes on recording. */
export function resumeRecording(): void {
  if (current === null) return;
  current.voice.begin();
  narrationState.setState({ phase: 'recording' });
  current.look();
  tick();
}

/** Stops recording for a while; what is shown meanwhile is no part of it. */
export async function pauseRecording(): Promise<void> {
  if (current === null) return;
  callOffTick();
  narrationState.setState({ phase: 'paused', elapsedUs: current.voice.nowUs() });
  await current.voice.end();
}

/** Ends the recording and keeps it. */
export async function endRecording(): Promise<void> {
  const recording = current;
  if (recording === null) return;
  current = null;
  callOffTick();
  recording.stopLooking();
  narrationState.setState({ phase: 'keeping' });
  await recording.voice.end();
  recording.voice.close();
  await recording.sent();
  await keepRecording(recording.narrationId, recording.clipId);
}

/** Keeps what was recorded, also what was left by an interruption. */
export async function keepRecording(narrationId: string, clipId: string): Promise<void> {
  narrationState.setState({ phase: 'keeping' });
  await mutate('narrations.keep', { narrationId });
  const { clipId: open } = narrationState.getState();
  stopNarrating();
  if (open === clipId) await readNarration(clipId);
}
