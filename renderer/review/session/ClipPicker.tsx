import { Ellipsis, EllipsisVertical, Plus, TriangleAlert } from 'lucide-react';
import { type DragEvent, useEffect, useRef, useState } from 'react';
import type { ClipMedia } from '../../../electron/contract/clips.ts';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
import { clipsOfSet, leadOf, setsOf } from '../../../engine/review/camerasOfSet.ts';
import type { Clip, Entry, Review } from '../../../engine/review/review.ts';
import { clipMenu, entryMenu } from '../../commands/arrangingCommands.ts';
import { CommandMenu } from '../../commands/CommandMenu.tsx';
import { reviewState } from '../../state/reviewState.ts';
import { sayArranging } from '../../words/sayArranging.ts';
import { sayReviewHead } from '../../words/sayReviewHead.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { carriesClip, drop, takeAlong } from './draggedClip.ts';

type ClipPickerProps = {
  readonly review: Review;
  readonly media: readonly ClipMedia[];
  readonly clipId: string | null;
  readonly exercises: readonly Exercise[];
  /** Without it no clip can be added, and none moved. */
  readonly onAdd?: () => void;
};

/** Which set of its exercise a clip shows. */
const setNumber = (clips: readonly Clip[], clip: Clip): number =>
  setsOf(clips).findIndex(({ lead }) => lead.id === leadOf(clips, clip).id) + 1;

/** Which camera of its set a clip is of; the one that leads is the first. */
const cameraNumber = (clips: readonly Clip[], clip: Clip): number =>
  clipsOfSet(clips, clip).findIndex(({ id }) => id === clip.id) + 1;

/** "Set 2", or "Set 2, camera 2" where another clip leads it. */
function setName(clips: readonly Clip[], clip: Clip): string {
  const camera = cameraNumber(clips, clip);
  const set = setNumber(clips, clip);
  return camera > 1 ? sayReviewHead('setCamera', { set, camera }) : sayReviewHead('set', { set });
}

/** Lets a dragged clip be dropped in front of a clip, or at the end of an exercise. */
const dropsIn = (entry: Entry, before: string | null, onOver: (id: string | null) => void) => ({
  onDragOver: (event: DragEvent) => {
    if (!carriesClip(event.dataTransfer)) return;
    event.preventDefault();
    event.stopPropagation();
    onOver(before ?? entry.id);
  },
  onDragLeave: () => onOver(null),
  onDrop: (event: DragEvent) => {
    if (!carriesClip(event.dataTransfer)) return;
    event.preventDefault();
    event.stopPropagation();
    onOver(null);
    void drop(event.dataTransfer, entry, before);
  },
});

/** The session's clips in order, by exercise; they can be dragged to another place. */
export function ClipPicker({ review, media, clipId, exercises, onAdd }: ClipPickerProps) {
  const list = useRef<HTMLDivElement>(null);
  const context = useReview();
  /** The clip in front of which a dragged one would come, or the exercise at whose end. */
  const [over, setOver] = useState<string | null>(null);
  const shown = review.entries.find((entry) => entry.clips.some((clip) => clip.id === clipId));
  const clipName = shown?.clips.find((clip) => clip.id === clipId)?.name ?? '';
  useEffect(() => {
    if (clipId === null) return;
    list.current?.querySelector('[aria-current=true]')?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [clipId]);
  return (
    <nav className="clip-picker" aria-label={sayReviewHead('clips')}>
      <div className="clip-list" ref={list}>
        {review.entries.map((entry) => {
          const name = exercises.find((known) => known.id === entry.exercise)?.name ?? entry.exercise;
          return (
            <div
              className="clip-group"
              key={entry.id}
              data-drop={over === entry.id ? 'end' : undefined}
              {...(onAdd !== undefined && dropsIn(entry, null, setOver))}
            >
              <span className="clip-group-name">{name}</span>
              {entry.id === shown?.id && onAdd !== undefined && (
                <CommandMenu label={sayArranging('menuOf', { name })} commands={entryMenu} context={context}>
                  <EllipsisVertical aria-hidden="true" />
                </CommandMenu>
              )}
              {entry.clips.length === 0 && <span className="soft">{sayReviewHead('noClipsShort')}</span>}
              {entry.clips.map((clip) => (
                <button
                  key={clip.id}
                  type="button"
                  draggable={onAdd !== undefined}
                  onDragStart={(event) => takeAlong(event.dataTransfer, clip.id)}
                  data-drop={over === clip.id ? 'before' : undefined}
                  {...(onAdd !== undefined && dropsIn(entry, clip.id, setOver))}
                  className="chip"
                  title={clip.name}
                  aria-label={sayReviewHead('clip', {
                    exercise: name,
                    set: setNumber(entry.clips, clip),
                    camera: cameraNumber(entry.clips, clip),
                    name: clip.name,
                  })}
                  aria-current={clip.id === clipId ? 'true' : undefined}
                  onClick={() => reviewState.getState().show({ clipId: clip.id, frame: 0 })}
                >
                  {setName(entry.clips, clip)}
                  {media.find((known) => known.clipId === clip.id)?.trouble !== null && (
                    <TriangleAlert aria-hidden="true" />
                  )}
                </button>
              ))}
            </div>
          );
        })}
      </div>
      {shown !== undefined && onAdd !== undefined && (
        <CommandMenu label={sayArranging('menuOf', { name: clipName })} commands={clipMenu} context={context}>
          <Ellipsis aria-hidden="true" />
        </CommandMenu>
      )}
      {onAdd !== undefined && (
        <button type="button" className="quiet-button" onClick={onAdd}>
          <Plus aria-hidden="true" /> {sayReviewHead('addClips')}
        </button>
      )}
    </nav>
  );
}
