import { Trash2 } from 'lucide-react';
import { useEffect, useRef } from 'react';
import type { ClipMedia } from '../../../electron/contract/clips.ts';
import { framesShown } from '../../../engine/framing/section.ts';
import type { Clip } from '../../../engine/review/review.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { keyWords } from '../../commands/keys.ts';
import { keysState } from '../../commands/keysState.ts';
import { frameBack, frameOn } from '../../player/playingCommands.ts';
import { sayCovers } from '../../words/sayCovers.ts';
import { addBox, addHead, leaveCovering, removeCover, visitCover } from '../commands/covering.ts';
import { measure } from '../commands/measuring.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import type { ReviewContext } from '../commands/reviewContext.ts';
import { coverState } from '../state/pictureTools.ts';
import { CoverFields } from './CoverFields.tsx';
import { type ClipCoverShown, coverName, coverSpan, useClipCovers, useJointsKnown } from './clipCovers.ts';
import { middleBox } from './coverBoxes.ts';

type CoverPanelProps = { readonly clip: Clip; readonly media: ClipMedia; readonly table: FrameTable };

/** The panel for covering faces and places; it replaces the card, so that the picture stays large. */
export function CoverPanel({ clip, media, table }: CoverPanelProps) {
  const context = useReview();
  const { clipId } = media;
  const { selectedId, focusNext } = coverState();
  const covers = useClipCovers(clipId);
  const jointsKnown = useJointsKnown(clipId);
  const chosen = keysState((state) => state.chosen);
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
    <section className="covers" aria-label={sayCovers('covers')}>
      <header>
        <h2>{sayCovers('covers')}</h2>
        <button type="button" onClick={() => leaveCovering(context)}>
          {sayCovers('done')}
        </button>
      </header>
      <p>{sayCovers('intro')}</p>
      <p className="soft">{sayCovers('how')}</p>
      <div className="cover-buttons">
        <button ref={first} type="button" onClick={() => void addBox(context, middleBox(media))}>
          {sayCovers('add')}
        </button>
        {jointsKnown && (
          <button
            type="button"
            disabled={covers.some(({ cover }) => cover.kind === 'head')}
            onClick={() => void addHead(context)}
          >
            {sayCovers('addHead')}
          </button>
        )}
      </div>
      {!jointsKnown && <p className="soft">{sayCovers('jointsUnknown', { key: keyWords(chosen, measure) })}</p>}
      <CoverList covers={covers} clip={clip} table={table} />
      {selected !== undefined && (
        <CoverFields
          key={selected.coverId}
          kept={selected}
          name={coverName(selected.cover, index)}
          shown={framesShown(clip.section, table)}
          picture={media}
        />
      )}
      <p className="soft">
        {sayCovers('byKeys', { back: keyWords(chosen, frameBack), on: keyWords(chosen, frameOn) })}
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

type CoverListProps = {
  readonly covers: readonly ClipCoverShown[];
  readonly clip: Clip;
  readonly table: FrameTable;
};

/** Every cover of the clip, each with buttons to go to it and to remove it. */
function CoverList({ covers, clip, table }: CoverListProps) {
  const context = useReview();
  const selectedId = coverState((state) => state.selectedId);
  if (covers.length === 0) return <p className="soft">{sayCovers('nothing')}</p>;
  return (
    <ul className="cover-list" aria-label={sayCovers('list')}>
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
              <span className="soft">{coverSpan(kept.cover, clip, table)}</span>
            </button>
            <button
              type="button"
              className="icon-button"
              aria-label={sayCovers('remove', { cover: name })}
              onClick={() => void removeCover(kept.coverId)}
            >
              <Trash2 aria-hidden="true" />
            </button>
            {kept.placed === null && <p className="cover-lost">{sayCovers('headLost')}</p>}
          </li>
        );
      })}
    </ul>
  );
}
