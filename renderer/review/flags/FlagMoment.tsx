import { useState } from 'react';
import type { Clip, Flag } from '../../../engine/review/review.ts';
import { frameStartUs } from '../../../engine/time/frames.ts';
import { ticksToUs } from '../../../engine/time/moment.ts';
import { clock } from '../../base/figures.ts';
import { statusState } from '../../bridge/statusState.ts';
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
    const frame = frameOfTyped(typed, table);
    if (frame === null) {
      const endUs = ticksToUs(table.endTicks, table.timeBase);
      const lastFrame = table.ticks.length - 1;
      const [first, last] = [clock(frameStartUs(table, 0)), clock(endUs)];
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
