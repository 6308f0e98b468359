import { useState } from 'react';
import { framesShown } from '../../../engine/framing/section.ts';
import { toldFrame, toldUs } from '../../../engine/framing/toldTime.ts';
import type { Clip, Flag } from '../../../engine/review/review.ts';
import { frameEndUs } from '../../../engine/time/frames.ts';
import { clock } from '../../base/figures.ts';
import { statusState } from '../../bridge/statusState.ts';
import { clipClock } from '../../player/clipClock.ts';
import { tablesState } from '../../state/clipState.ts';
import { sayFlags } from '../../words/sayFlags.ts';
import { copyFlagTo, flagHere, moveFlag, moveFlagHere } from '../commands/flagging.ts';
import { ReviewButton, useReview } from '../commands/ReviewDeskProvider.tsx';
import { momentWords } from '../model/moments.ts';
import { frameOfTyped } from '../model/typedMoment.ts';
import { copyState } from '../state/panelState.ts';

type FlagMomentProps = { readonly flag: Flag; readonly clip: Clip };

/** When a flag is: another time or frame can be typed, or the frame on screen taken; and a way to copy it elsewhere. */
export function FlagMoment({ flag, clip }: FlagMomentProps) {
  const context = useReview();
  const [typed, setTyped] = useState<string | null>(null);
  const table = tablesState((state) => state.tables[clip.id]?.table);
  const written = momentWords(flag.at, clip);
  const put = (): void => {
    if (typed === null || table === undefined || typed.trim() === written) return setTyped(null);
    const frame = frameOfTyped(typed, clip, table);
    if (frame === null) {
      const range = framesShown(clip.section, table);
      const endUs = toldUs(clip, frameEndUs(table, range.lastFrame), table.timeBase);
      const lastFrame = toldFrame(clip, range.lastFrame);
      const [first, last] = [clipClock(clip, table, range.firstFrame), clock(endUs)];
      statusState.getState().refuse(sayFlags('outside', { typed: typed.trim().slice(0, 20), first, last, lastFrame }));
      return;
    }
    setTyped(null);
    context.player?.pause();
    if (context.stage?.clip.id === clip.id) context.player?.seekTo(frame);
    void moveFlag(context, flag, frame);
  };
  return (
    <div className="flag-moment">
      <input
        type="text"
        className="timecode"
        aria-label={sayFlags('momentOf')}
        title={sayFlags('momentHint')}
        aria-description={sayFlags('momentHint')}
        value={typed ?? written}
        maxLength={14}
        spellCheck={false}
        autoComplete="off"
        disabled={table === undefined}
        onFocus={(event) => event.currentTarget.select()}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={put}
        onKeyDown={(event) => {
          if (event.key === 'Escape') setTyped(null);
          if (event.key === 'Escape' || event.key === 'Enter') event.currentTarget.blur();
        }}
      />
      <ReviewButton
        command={flagHere}
        instead={(review) => void moveFlagHere(review, flag)}
        words={sayFlags('here')}
        className="quiet-button"
      />
      <ReviewButton
        command={copyFlagTo}
        instead={() => copyState.setState({ flagId: flag.id })}
        words={sayFlags('copyTo')}
        className="quiet-button"
      />
    </div>
  );
}
