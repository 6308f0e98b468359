import { useMemo, useState } from 'react';
import { useShallow } from 'zustand/react/shallow';
import { clipOf, entryOfClip } from '../../engine/review/parts.ts';
import { everyRefresh } from '../base/later.ts';
import { ReceivedNote } from '../base/ReceivedNote.tsx';
import { ScreenCommands, useCommandPanel } from '../commands/ScreenCommands.tsx';
import { ImportDialog } from '../importing/ImportDialog.tsx';
import { SessionWait } from '../shared/SessionWait.tsx';
import { catalogueState } from '../state/catalogueState.ts';
import { tablesState } from '../state/clipState.ts';
import { reviewState } from '../state/reviewState.ts';
import { screenState } from '../state/screenState.ts';
import { sayReviewHead } from '../words/sayReviewHead.ts';
import { BesidePicture } from './BesidePicture.tsx';
import { ClipStage } from './ClipStage.tsx';
import { ClipTimeline } from './ClipTimeline.tsx';
import { exercisesTyped } from './commands/choosingExercise.ts';
import { ReviewDeskProvider } from './commands/ReviewDeskProvider.tsx';
import { reviewCommands } from './commands/reviewCommands.ts';
import { createReviewDesk } from './commands/reviewDesk.ts';
import { CopyFlagDialog } from './flags/CopyFlagDialog.tsx';
import { LargeBar } from './LargeBar.tsx';
import { Divider } from './layout/Divider.tsx';
import { ReviewGrid } from './layout/ReviewGrid.tsx';
import type { Size } from './model/pictureGeometry.ts';
import { ClipPicker } from './session/ClipPicker.tsx';
import { ReviewHead, SessionDialog } from './session/ReviewHead.tsx';
import { framingState } from './state/framingState.ts';
import { layoutState, shapeOf } from './state/layoutState.ts';
import { coverState, drawingState, setUpState } from './state/pictureTools.ts';
import { useReviewLife } from './useReviewLife.ts';

type Opened = 'none' | 'session' | 'import';

/** Where commands put the focus on the page. */
const pageFocus = {
  onNote: (flagId: string, isMissing: () => void): void => {
    let refreshesLeft = 90;
    const look = (): boolean => {
      const field = document.getElementById(`note-${flagId}`);
      field?.focus();
      return field !== null;
    };
    if (look()) return;
    const stop = everyRefresh(() => {
      refreshesLeft -= 1;
      if (look()) stop();
      else if (refreshesLeft === 0) {
        stop();
        isMissing();
      }
    });
  },
  backOnCard: (): void => {
    const active = document.activeElement;
    if (active instanceof HTMLElement || active instanceof SVGElement) active.blur();
    document.querySelector<HTMLElement>('.scorecard [data-cursor=true]')?.focus({ preventScroll: true });
  },
} as const;

const unknownSize = { width: 0, height: 0 };

const aspectOf = ({ width, height }: Size = unknownSize): number => (width > 0 && height > 0 ? width / height : 16 / 9);

/** Where a session is judged: the clip on the left, the scorecard on the right. */
export function ReviewScreen({ sessionId }: { readonly sessionId: string }) {
  const { data, clipId } = reviewState(useShallow(({ data, clipId }) => ({ data, clipId })));
  const catalogue = catalogueState((state) => state.catalogue);
  const tables = tablesState((state) => (clipId === null ? undefined : state.tables[clipId]));
  const [opened, setOpened] = useState<Opened>('none');
  const [commandPanel, setPanel] = useCommandPanel();
  const busy = [
    setUpState((state) => state.settingUp === 'on'),
    coverState((state) => state.covering === 'on'),
    drawingState((state) => state.drawing === 'on'),
    framingState((state) => state.framing === 'on'),
  ].includes(true);
  const asLarge = layoutState((state) => state.large);
  const secondLook = data !== null && data.secondLookOf !== null;
  const readOnly = data?.readOnly === true;
  const desk = useMemo(() => createReviewDesk(sessionId, pageFocus), [sessionId]);
  useReviewLife(desk.context);

  if (data === null || catalogue === null) return <SessionWait words={sayReviewHead('opening')} />;
  const entry = clipId === null ? undefined : entryOfClip(data.review, clipId);
  const clip = entry === undefined || clipId === null ? undefined : clipOf(entry, clipId);
  const grade = data.grade.entries.find((known) => known.entryId === entry?.id);
  const exercise = catalogue.exercises.find((known) => known.id === entry?.exercise) ?? null;
  const media = data.media.find((known) => known.clipId === clipId);
  const shape = shapeOf(media ?? unknownSize);
  const judged =
    clip === undefined || entry === undefined || grade === undefined
      ? null
      : { entry, clip, grade, exercise, catalogue };
  // Tools over the picture have their fields beside it or under it.
  const large = asLarge && judged !== null && !busy;
  const clips = (
    <ClipPicker
      review={data.review}
      media={data.media}
      clipId={clipId}
      exercises={catalogue.exercises}
      {...(readOnly || clip === undefined ? {} : { onAdd: () => setOpened('import') })}
    />
  );
  const timeline = clip !== undefined && media !== undefined && entry !== undefined && (
    <ClipTimeline key={`timeline ${clip.id}`} clip={clip} media={media} flags={entry.flags} tables={tables ?? null} />
  );

  return (
    <ReviewDeskProvider desk={desk}>
      {!large && (
        <ReviewHead
          review={data.review}
          history={data.history}
          secondLook={secondLook}
          onDesk={() => screenState.getState().go({ kind: 'desk' })}
          {...(readOnly ? {} : { onSession: () => setOpened('session') })}
          onPanel={setPanel}
        />
      )}
      {readOnly && !large && <ReceivedNote />}
      <ReviewGrid shape={shape} aspect={aspectOf(media)} large={large}>
        <div className="review-left">
          {!large && shape === 'landscape' && clips}
          {clip !== undefined && media !== undefined ? (
            <ClipStage key={`stage ${clip.id}`} clip={clip} media={media} tables={tables ?? null} />
          ) : (
            <div className="empty">
              <p>{sayReviewHead('noClips')}</p>
              {!readOnly && (
                <button type="button" className="primary" onClick={() => setOpened('import')}>
                  {sayReviewHead('addClips')}
                </button>
              )}
            </div>
          )}
          {!large && shape === 'landscape' && timeline}
        </div>
        {judged !== null && large && <LargeBar {...judged} readOnly={readOnly} />}
        {judged !== null && !large && (
          <>
            <Divider shape={shape} />
            <div className="review-right">
              {shape === 'portrait' && clips}
              <BesidePicture {...judged} sessionId={sessionId} data={data} media={media} tables={tables ?? null} />
              {shape === 'portrait' && timeline}
            </div>
          </>
        )}
      </ReviewGrid>
      <ScreenCommands
        commands={reviewCommands}
        context={desk.context}
        forTyped={exercisesTyped}
        keepsFirst={desk.context.typing.keep}
        sessionId={sessionId}
        panel={commandPanel}
        onPanel={setPanel}
      />
      {!readOnly && <CopyFlagDialog review={data.review} />}
      {opened === 'session' && (
        <SessionDialog sessionId={sessionId} review={data.review} onClose={() => setOpened('none')} />
      )}
      {opened === 'import' && (
        <ImportDialog sessionId={sessionId} entryId={entry?.id ?? null} paths={[]} onClose={() => setOpened('none')} />
      )}
    </ReviewDeskProvider>
  );
}
