import type { ClipMedia } from '../../electron/contract/clips.ts';
import type { Clip, Flag } from '../../engine/review/review.ts';
import { reviewState } from '../state/reviewState.ts';
import type { ClipTables } from '../state/tablesState.ts';
import { CoverButton } from './covers/CoverButton.tsx';
import { DrawBar } from './drawings/DrawBar.tsx';
import { DrawButton } from './drawings/DrawButton.tsx';
import { MeasureBar } from './measures/MeasureBar.tsx';
import { PictureLayers } from './PictureLayers.tsx';
import { Readout } from './stage/Readout.tsx';
import { RepKeys } from './stage/RepKeys.tsx';
import { Stage } from './stage/Stage.tsx';
import { Transport } from './stage/Transport.tsx';
import { Strip } from './strip/Strip.tsx';

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
        <Transport {...(readable ? {} : { disabled: true })} />
        {!readOnly && (
          <>
            <DrawButton {...(readable ? {} : { disabled: true })} />
            <CoverButton {...(readable ? {} : { disabled: true })} />
            <MeasureBar clipId={clip.id} {...(readable ? {} : { disabled: true })} />
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
