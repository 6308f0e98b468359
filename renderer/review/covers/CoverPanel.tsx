import { useEffect, useRef } from 'react';
import type { ClipMedia } from '../../../electron/contract/clips.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { KeyHint } from '../../commands/CommandButton.tsx';
import { frameBack, frameOn } from '../../player/playingCommands.ts';
import { addBox, addHead, leaveCovering } from '../commands/covering.ts';
import { measure } from '../commands/measuring.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import type { ReviewContext } from '../commands/reviewContext.ts';
import { coverState } from '../state/coverState.ts';
import { CoverFields } from './CoverFields.tsx';
import { CoverList } from './CoverList.tsx';
import { middleBox } from './coverBoxes.ts';
import { coverName } from './coverWords.ts';
import { useClipCovers, useJointsKnown } from './useClipCovers.ts';

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
