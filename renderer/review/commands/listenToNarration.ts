import { voiceAddress } from '../../../electron/contract/addresses.ts';
import { asFilmed } from '../../../engine/framing/framing.ts';
import { seenPart } from '../../../engine/framing/picturePlaces.ts';
import type { Look } from '../../../engine/narration/narration.ts';
import { framesAhead, shapesOf, shownAt } from '../../../engine/narration/shownAt.ts';
import { statusState } from '../../bridge/statusState.ts';
import { sayNarration } from '../../words/sayNarration.ts';
import { zoomFor } from '../model/nearness.ts';
import { narrationState, stopNarrating } from '../state/narrationState.ts';
import { playerState } from '../state/playerState.ts';
import { type Layer, layersState, zoomState } from '../state/viewState.ts';
import type { ReviewContext } from './reviewContext.ts';

/** Decoded ahead: half a second and more of what was shown, and not too many pictures. */
const mostAhead = 24;

let stopListening: (() => void) | null = null;

/** Plays what was said over the clip on the stage; the picture shows at each time what was shown then. */
export async function listen(context: ReviewContext): Promise<void> {
  const { stage, player, data } = context;
  const { narration } = narrationState.getState();
  const media = data?.media.find(({ clipId }) => clipId === stage?.clip.id);
  if (stage === null || player === null || media === undefined || narration?.track == null) return;
  const { track, lastsUs } = narration;
  const part = seenPart(media, stage.clip.framing ?? asFilmed);
  const sound = new Audio(voiceAddress(stage.clip.id, narration.narrationId));
  sound.preload = 'auto';
  const nowUs = (): number => Math.round(sound.currentTime * 1_000_000);
  const before = { zoom: zoomState.getState().zoom, hidden: layersState.getState().hidden };
  let shown: Look | null = null;
  let over = false;

  const showLook = (look: Look): void => {
    if (look === shown) return;
    shown = look;
    const { stage: size } = zoomState.getState();
    zoomState.setState({ zoom: zoomFor(look.near, size, part) });
    layersState.setState({ hidden: hiddenFor(look, before.hidden) });
    narrationState.setState({ drawn: shapesOf(track, look) });
  };
  const stop = (): void => {
    if (over) return;
    over = true;
    stopListening = null;
    stopWatching();
    sound.pause();
    sound.removeAttribute('src');
    zoomState.setState({ zoom: before.zoom });
    layersState.setState({ hidden: before.hidden });
    stopNarrating();
  };
  const fail = (): void => {
    if (over) return;
    statusState.getState().tell(sayNarration('notHeard'));
    player.pause();
    stop();
  };
  // Whatever else moves the picture ends the listening: the sound alone would speak of something else.
  const stopWatching = playerState.subscribe(({ playing }) => {
    if (playing === 'no') stop();
  });
  stopListening = () => player.pause();
  narrationState.setState({ phase: 'listening', elapsedUs: 0 });
  sound.addEventListener('error', fail);
  player.follow({
    due: () => {
      if (sound.ended || nowUs() >= lastsUs) return null;
      const now = shownAt(track, nowUs());
      showLook(now.look);
      const elapsedUs = Math.floor(nowUs() / 250_000) * 250_000;
      if (narrationState.getState().elapsedUs !== elapsedUs) narrationState.setState({ elapsedUs });
      return now.frame;
    },
    ahead: () => framesAhead(track, nowUs(), mostAhead),
    onPace: (pace) => {
      if (over) return;
      if (pace === 'waiting') sound.pause();
      else sound.play().catch(fail);
    },
  });
}

/** The layers to hide: those that were not shown then; the curves along the strip stay as they are. */
const hiddenFor = ({ layers }: Look, before: readonly Layer[]): readonly Layer[] =>
  (['path', 'disc', 'joints', 'curves'] as const).filter((layer) =>
    layer === 'curves' ? before.includes(layer) : !layers.includes(layer),
  );

/** Ends listening; nothing happens where nobody listens. */
export const endListening = (): void => stopListening?.();
