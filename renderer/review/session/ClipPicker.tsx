import { Plus, TriangleAlert } from 'lucide-react';
import { useEffect, useRef } from 'react';
import type { ClipMedia } from '../../../electron/contract/clips.ts';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
import type { Review } from '../../../engine/review/review.ts';
import { reviewState } from '../../state/reviewState.ts';
import { sayReviewHead } from '../../words/sayReviewHead.ts';

type ClipPickerProps = {
  readonly review: Review;
  readonly media: readonly ClipMedia[];
  readonly clipId: string | null;
  readonly exercises: readonly Exercise[];
  /** Without it no clip can be added. */
  readonly onAdd?: () => void;
};

/** The session's clips in order, by exercise. */
export function ClipPicker({ review, media, clipId, exercises, onAdd }: ClipPickerProps) {
  const list = useRef<HTMLDivElement>(null);
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
            <div className="clip-group" key={entry.id}>
              <span className="clip-group-name">{name}</span>
              {entry.clips.length === 0 && <span className="soft">{sayReviewHead('noClipsShort')}</span>}
              {entry.clips.map((clip, index) => (
                <button
                  key={clip.id}
                  type="button"
                  className="chip"
                  title={clip.name}
                  aria-label={sayReviewHead('clip', { exercise: name, set: index + 1, name: clip.name })}
                  aria-current={clip.id === clipId ? 'true' : undefined}
                  onClick={() => reviewState.getState().show({ clipId: clip.id, frame: 0 })}
                >
                  {sayReviewHead('set', { set: index + 1 })}
                  {media.find((known) => known.clipId === clip.id)?.trouble !== null && (
                    <TriangleAlert aria-hidden="true" />
                  )}
                </button>
              ))}
            </div>
          );
        })}
      </div>
      {onAdd !== undefined && (
        <button type="button" className="quiet-button" onClick={onAdd}>
          <Plus aria-hidden="true" /> {sayReviewHead('addClips')}
        </button>
      )}
    </nav>
  );
}
