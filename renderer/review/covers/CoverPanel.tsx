import { Trash2 } from 'lucide-react';
import { useEffect, useRef } from 'react';
import type { ClipMedia } from '../../../electron/contract/clips.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { KeyHint } from '../../commands/CommandButton.tsx';
import { frameBack, frameOn } from '../../player/playingCommands.ts';
import { addBox, addHead, leaveCovering, removeCover, visitCover } from '../commands/covering.ts';
import { measure } from '../commands/measuring.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import type { ReviewContext } from '../commands/reviewContext.ts';
import { coverState } from '../state/pictureTools.ts';
import { CoverFields } from './CoverFields.tsx';
import { type ClipCoverShown, coverName, coverSpan, useClipCovers, useJointsKnown } from './clipCovers.ts';
import { middleBox } from './coverBoxes.ts';

type CoverPanelProps = { readonly media: ClipMedia; readonly table: FrameTable };

/** The panel for covering faces and places; it replaces the card, so that the picture stays large. */
export function CoverPanel({ media, table }: CoverPanelProps) {
  const context = useReview();
  const { clipId } = media;
  const { selectedId, focusNext } = coverState();
  const covers = useClipCovers(clipId);
  const jointsKnown = useJointsKnown(clipId);
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    if (focusNext !== 'tools') return;
    first.current?.focus();
    coverState.setState({ focusNext: null });
  }, [focusNext]);
  useLeaveByKey(context);
  const index = covers.findIndex(({ coverId }) => coverId === selectedId);
  const selected = covers[index];
  return (
    <section className="covers" aria-label="Covers">
      <header>
        <h2>Covers</h2>
        <button type="button" onClick={() => leaveCovering(context)}>
          Done
        </button>
      </header>
      <p className="soft">
        What is covered can’t be made out in any clip, loop or still that is handed over, and the clip’s original stays
        here. Drag over a face or a place; step on, and drag the box along: between two places it moves evenly.
      </p>
      <div className="cover-buttons">
        <button ref={first} type="button" onClick={() => void addBox(context, middleBox(media))}>
          Add a cover in the middle of the picture
        </button>
        {jointsKnown && (
          <button
            type="button"
            disabled={covers.some(({ cover }) => cover.kind === 'head')}
            onClick={() => void addHead(context)}
          >
            Cover the lifter’s head (by the joints)
          </button>
        )}
      </div>
      {!jointsKnown && (
        <p className="soft">
          The lifter’s head can be covered by itself once the joints are known: measure this clip first{' '}
          <KeyHint command={measure} />.
        </p>
      )}
      <CoverList covers={covers} table={table} />
      {selected !== undefined && (
        <CoverFields key={selected.coverId} kept={selected} name={coverName(selected.cover, index)} table={table} />
      )}
      <p className="soft">
        With the keys: arrows move the box in hand, Alt with an arrow makes it wider, narrower, taller or lower, Delete
        takes it away. <KeyHint command={frameBack} /> <KeyHint command={frameOn} /> step from frame to frame meanwhile.
      </p>
    </section>
  );
}

/** Escape ends covering wherever the focus is, unless a dialog or a field uses it. */
function useLeaveByKey(context: ReviewContext): void {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent): void => {
      if (event.key !== 'Escape' || event.defaultPrevented || document.querySelector('dialog[open]') !== null) return;
      event.preventDefault();
      leaveCovering(context);
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, [context]);
}

type CoverListProps = { readonly covers: readonly ClipCoverShown[]; readonly table: FrameTable };

/** Every cover of the clip, each with buttons to go to it and to remove it. */
function CoverList({ covers, table }: CoverListProps) {
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
