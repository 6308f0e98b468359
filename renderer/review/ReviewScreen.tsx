import { useMemo, useState } from 'react';
import { useShallow } from 'zustand/react/shallow';
import { clipOf, entryOfClip } from '../../engine/review/parts.ts';
import { everyRefresh } from '../base/later.ts';
import { ReceivedNote } from '../base/ReceivedNote.tsx';
import { SessionCautions } from '../base/SessionCautions.tsx';
import { KeyHint } from '../commands/CommandButton.tsx';
import { ScreenCommands, useCommandPanel } from '../commands/ScreenCommands.tsx';
import { ImportDialog } from '../importing/ImportDialog.tsx';
import { catalogueState } from '../state/catalogueState.ts';
import { measuresState, tablesState } from '../state/clipState.ts';
import { reviewState } from '../state/reviewState.ts';
import { screenState } from '../state/screenState.ts';
import { sayReviewHead } from '../words/sayReviewHead.ts';
import { CardPanel } from './CardPanel.tsx';
import { exercisesTyped } from './commands/choosingExercise.ts';
import { panel as panelCommand, showPanel } from './commands/measuring.ts';
import { ReviewDeskProvider } from './commands/ReviewDeskProvider.tsx';
import { reviewCommands } from './commands/reviewCommands.ts';
import { createReviewDesk } from './commands/reviewDesk.ts';
import { CoverPanel } from './covers/CoverPanel.tsx';
import { CopyFlagDialog } from './flags/CopyFlagDialog.tsx';
import { HintCard } from './HintCard.tsx';
import { MeasuresPanel } from './measures/MeasuresPanel.tsx';
import { StageColumn } from './StageColumn.tsx';
import { ClipPicker } from './session/ClipPicker.tsx';
import { EntryBar } from './session/EntryBar.tsx';
import { ReviewHead, SessionDialog } from './session/ReviewHead.tsx';
import { SetUpPanel } from './setUp/SetUpPanel.tsx';
import { panelState } from './state/panelState.ts';
import { coverState, setUpState } from './state/pictureTools.ts';
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
  },
} as const;

/** Where a session is judged: the clip on the left, the scorecard on the right. */
export function ReviewScreen({ sessionId }: { readonly sessionId: string }) {
  const { data, clipId } = reviewState(useShallow(({ data, clipId }) => ({ data, clipId })));
  const catalogue = catalogueState((state) => state.catalogue);
  const tables = tablesState((state) => (clipId === null ? undefined : state.tables[clipId]));
  const [opened, setOpened] = useState<Opened>('none');
  const [commandPanel, setPanel] = useCommandPanel();
  const panel = panelState((state) => state.panel);
  const settingUp = setUpState((state) => state.settingUp === 'on');
  const covering = coverState((state) => state.covering === 'on');
  const free = !settingUp && !covering;
  const secondLook = data !== null && data.secondLookOf !== null;
  const readOnly = data?.readOnly === true;
  const desk = useMemo(() => createReviewDesk(sessionId, pageFocus), [sessionId]);
  useReviewLife(desk.context);

  if (data === null || catalogue === null) return <main className="screen-wait">{sayReviewHead('opening')}</main>;
  const entry = clipId === null ? undefined : entryOfClip(data.review, clipId);
  const clip = entry === undefined || clipId === null ? undefined : clipOf(entry, clipId);
  const grade = data.grade.entries.find((known) => known.entryId === entry?.id);
  const exercise = catalogue.exercises.find((known) => known.id === entry?.exercise) ?? null;
  const media = data.media.find((known) => known.clipId === clipId);

  return (
    <ReviewDeskProvider desk={desk}>
      <ReviewHead
        review={data.review}
        history={data.history}
        secondLook={secondLook}
        onDesk={() => screenState.getState().go({ kind: 'desk' })}
        {...(readOnly ? {} : { onSession: () => setOpened('session') })}
        onPanel={setPanel}
      />
      {readOnly ? <ReceivedNote /> : <HintCard />}
      <main className="review">
        <div className="review-left">
          <ClipPicker
            review={data.review}
            media={data.media}
            clipId={clipId}
            exercises={catalogue.exercises}
            {...(readOnly ? {} : { onAdd: () => setOpened('import') })}
          />
          {clip !== undefined && media !== undefined && entry !== undefined ? (
            <StageColumn key={clip.id} clip={clip} media={media} flags={entry.flags} tables={tables ?? null} />
          ) : (
            <p className="empty">{sayReviewHead('noClips')}</p>
          )}
        </div>
        {clip !== undefined && entry !== undefined && grade !== undefined && (
          <div className="review-right">
            <div className="review-top">
              <fieldset className="as-if-none" disabled={readOnly}>
                <EntryBar entry={entry} clip={clip} catalogue={catalogue} review={data.review} />
              </fieldset>
              <PanelTabs clipId={clip.id} />
            </div>
            <SessionCautions review={data.review} catalogue={catalogue} shown="folded" />
            {settingUp && media !== undefined && <SetUpPanel media={media} />}
            {covering && media !== undefined && tables !== undefined && (
              <CoverPanel media={media} table={tables.table} />
            )}
            {free && panel === 'card' && (
              <CardPanel
                sessionId={sessionId}
                data={data}
                entry={entry}
                grade={grade}
                exercise={exercise}
                catalogue={catalogue}
              />
            )}
            {free && panel === 'measures' && (
              <MeasuresPanel
                key={clip.id}
                entry={entry}
                clip={clip}
                exercise={exercise}
                goal={data.review.trainee.goal}
                catalogue={catalogue}
                table={tables?.table ?? null}
              />
            )}
          </div>
        )}
      </main>
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

/** The scorecard, or what was measured; how many suggestions wait. */
function PanelTabs({ clipId }: { readonly clipId: string }) {
  const panel = panelState((state) => state.panel);
  const settingUp = setUpState((state) => state.settingUp === 'on');
  const covering = coverState((state) => state.covering === 'on');
  const free = !settingUp && !covering;
  const waiting = measuresState((state) => (state.clipId === clipId ? (state.measures?.suggestions.length ?? 0) : 0));
  return (
    <fieldset className="panel-tabs" aria-label={sayReviewHead('beside')}>
      <button type="button" aria-pressed={free && panel === 'card'} onClick={() => showPanel('card')}>
        {sayReviewHead('card')}
      </button>
      <button type="button" aria-pressed={free && panel === 'measures'} onClick={() => showPanel('measures')}>
        {sayReviewHead('measures')}
        {waiting > 0 && (
          <span className="waiting-count">
            {waiting}
            <span className="visually-hidden"> {sayReviewHead('waiting', { count: waiting })}</span>
          </span>
        )}
        <KeyHint command={panelCommand} />
      </button>
    </fieldset>
  );
}
