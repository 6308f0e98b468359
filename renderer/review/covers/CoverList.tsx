import { Trash2 } from 'lucide-react';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { removeCover, visitCover } from '../commands/covering.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { coverState } from '../state/coverState.ts';
import { coverName, coverSpan } from './coverWords.ts';
import type { ClipCoverShown } from './useClipCovers.ts';

type CoverListProps = { readonly covers: readonly ClipCoverShown[]; readonly table: FrameTable };

/** Every cover of the clip, each with buttons to go to it and to remove it. */
export function CoverList({ covers, table }: CoverListProps) {
  const context = useReview();
  const selectedId = coverState((state) => state.selectedId);
  if (covers.length === 0) return <p className="soft">Nothing is covered in this clip yet.</p>;
  return (
    <ul className="cover-list" aria-label="Covers of this clip">
      {covers.map((kept, index) => {
        const name = coverName(kept.cover, index);
        return (
          <li key={kept.coverId} data-testid="cover-row">
            <button
              type="button"
              className="quiet-button"
              aria-pressed={kept.coverId === selectedId}
              onClick={() => visitCover(context, kept)}
            >
              {name}
              <span className="soft">{coverSpan(kept.cover, table)}</span>
            </button>
            <button
              type="button"
              className="icon-button"
              aria-label={`Take away: ${name}`}
              onClick={() => void removeCover(kept.coverId)}
            >
              <Trash2 aria-hidden="true" />
            </button>
            {kept.placed === null && (
              <p className="cover-lost">
                The head is not seen here, so nothing of this clip is handed over while this cover is on it.
              </p>
            )}
          </li>
        );
      })}
    </ul>
  );
}
