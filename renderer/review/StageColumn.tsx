import { EyeOff, PencilLine } from 'lucide-react';
import type { ClipMedia } from '../../electron/contract/clips.ts';
import type { Clip, Flag } from '../../engine/review/review.ts';
import { cursorState } from '../state/cursorState.ts';
import { reviewState } from '../state/reviewState.ts';
import type { ClipTables } from '../state/tablesState.ts';
import { cover, leaveCovering } from './commands/covering.ts';
import { draw, leaveDrawing } from './commands/drawing.ts';
import { markEnd, markLongEnd, markStart, removeRep } from './commands/markingReps.ts';
import { ReviewButton } from './commands/ReviewDeskProvider.tsx';
import { DrawBar } from './drawings/DrawBar.tsx';
import { MeasureBar } from './measures/MeasureBar.tsx';
import { PictureLayers } from './PictureLayers.tsx';
import { Readout } from './stage/Readout.tsx';
import { Stage } from './stage/Stage.tsx';
import { Transport } from './stage/Transport.tsx';
import { coverState } from './state/coverState.ts';
import { drawingState } from './state/drawingState.ts';
import { Strip } from './strip/Strip.tsx';

/** Takes out the tools to draw and to cover with, or puts them away. */
function ToolButtons() {
  const drawing = drawingState((state) => state.drawing === 'on');
  const covering = coverState((state) => state.covering === 'on');
  return (
    <>
      <ReviewButton command={draw} expanded={drawing} instead={drawing ? leaveDrawing : undefined}>
        <PencilLine aria-hidden="true" />
      </ReviewButton>
      <ReviewButton command={cover} expanded={covering} instead={covering ? leaveCovering : undefined}>
        <EyeOff aria-hidden="true" />
      </ReviewButton>
    </>
  );
}

type StageColumnProps = {
  readonly clip: Clip;
  readonly media: ClipMedia;
  readonly flags: readonly Flag[];
  readonly tables: ClipTables | null;
};

/** Picture, controls, times and the strip of one clip. */
export function StageColumn({ clip, media, flags, tables }: StageColumnProps) {
  const readable = tables !== null && tables.table.ticks.length > 0;
  const readOnly = reviewState((state) => state.data?.readOnly === true);
  return (
    <>
      <Stage clip={clip} media={media} tables={readable ? tables : null}>
        {readable && <PictureLayers clip={clip} media={media} table={tables.table} />}
      </Stage>
      <div className="under-stage">
        <Transport />
        {!readOnly && (
          <>
            <ToolButtons />
            <MeasureBar clipId={clip.id} />
            <RepKeys clip={clip} />
          </>
        )}
      </div>
      {readable && (
        <>
          <DrawBar clip={clip} media={media} table={tables.table} />
          <Strip clip={clip} media={media} flags={flags.filter((flag) => flag.clip === clip.id)} table={tables.table} />
          <Readout clip={clip} table={tables.table} />
        </>
      )}
    </>
  );
}

/** Marking a rep's edges at the frame on screen, for the mouse too. */
export function RepKeys({ clip }: { readonly clip: Clip }) {
  const rep = cursorState((state) => (state.column?.clipId === clip.id ? state.column.rep : 'set'));
  return (
    <fieldset className="rep-keys" aria-label="Mark reps">
      <ReviewButton command={markStart} />
      <ReviewButton command={markLongEnd} />
      <ReviewButton command={markEnd} />
      <ReviewButton command={removeRep} shows="words" words={rep === 'set' ? 'Remove rep' : `Remove rep ${rep}`} />
    </fieldset>
  );
}
