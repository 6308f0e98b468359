import { Trash2 } from 'lucide-react';
import { footageFrame, toldFrame, toldFrameCount } from '../../../engine/framing/toldTime.ts';
import type { Drawing } from '../../../engine/review/drawings/drawing.ts';
import type { Clip } from '../../../engine/review/review.ts';
import { frameOfMoment } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import type { Moment } from '../../../engine/time/moment.ts';
import { sayDrawings } from '../../words/sayDrawings.ts';
import { changeTimes, removeDrawing, visitDrawing } from '../commands/drawing.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { momentWords } from '../model/moments.ts';
import { drawingState } from '../state/pictureTools.ts';
import { drawingWords } from './shapes.ts';

type DrawingListProps = { readonly clip: Clip; readonly table: FrameTable };

/** Everything drawn on the clip, with the frames from and to which it shows. */
export function DrawingList({ clip, table }: DrawingListProps) {
  const drawings = clip.drawings ?? [];
  if (drawings.length === 0) return null;
  return (
    <ul className="drawing-list" aria-label={sayDrawings('list')}>
      {drawings.map((drawing, index) => (
        <DrawingRow key={drawing.id} drawing={drawing} name={drawingWords(drawing, index)} clip={clip} table={table} />
      ))}
    </ul>
  );
}

type DrawingRowProps = DrawingListProps & { readonly drawing: Drawing; readonly name: string };

function DrawingRow({ drawing, name, clip, table }: DrawingRowProps) {
  const context = useReview();
  const selected = drawingState((state) => state.selectedId === drawing.id);
  const field = (label: string, moment: Moment, save: (frame: number) => void) => (
    <FrameField
      key={`${label} ${frameOfMoment(moment, table)}`}
      label={sayDrawings('fieldOf', { field: label, drawing: name })}
      shown={label}
      frame={toldFrame(clip, frameOfMoment(moment, table))}
      last={toldFrameCount(clip, table) - 1}
      onSave={(told) => save(footageFrame(clip, told))}
    />
  );
  return (
    <li data-testid="drawing-row">
      <button
        type="button"
        className="quiet-button"
        aria-pressed={selected}
        onClick={() => visitDrawing(context, drawing)}
      >
        {name}
        <span className="soft">{momentWords(drawing.from, clip)}</span>
      </button>
      {field(sayDrawings('fromFrame'), drawing.from, (firstFrame) => void changeTimes(drawing.id, { firstFrame }))}
      {field(sayDrawings('toFrame'), drawing.to, (lastFrame) => void changeTimes(drawing.id, { lastFrame }))}
      <button
        type="button"
        className="icon-button"
        aria-label={sayDrawings('remove', { drawing: name })}
        onClick={() => void removeDrawing(drawing.id)}
      >
        <Trash2 aria-hidden="true" />
      </button>
    </li>
  );
}

type FrameFieldProps = {
  readonly label: string;
  readonly shown: string;
  readonly frame: number;
  readonly last: number;
  readonly onSave: (frame: number) => void;
};

/** A frame number, saved on Enter and on leaving the field. */
function FrameField({ label, shown, frame, last, onSave }: FrameFieldProps) {
  const save = (field: HTMLInputElement): void => {
    const wanted = Math.round(field.valueAsNumber);
    if (!Number.isFinite(wanted)) field.value = String(frame);
    else if (wanted !== frame) onSave(Math.min(Math.max(0, wanted), last));
  };
  return (
    <label className="field-inline">
      <span>{shown}</span>
      <input
        type="number"
        aria-label={label}
        min={0}
        max={last}
        defaultValue={frame}
        onBlur={(event) => save(event.currentTarget)}
        onKeyDown={(event) => {
          if (event.key === 'Enter') save(event.currentTarget);
        }}
      />
    </label>
  );
}
