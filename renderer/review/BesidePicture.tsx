import { useEffect, useRef } from 'react';
import type { ClipMedia } from '../../electron/contract/clips.ts';
import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import type { Exercise } from '../../engine/exercises/exercise.ts';
import type { EntryGrade } from '../../engine/grading/grade.ts';
import type { Clip, Entry } from '../../engine/review/review.ts';
import { SessionCautions } from '../base/SessionCautions.tsx';
import { KeyHint, useShortcuts } from '../commands/CommandButton.tsx';
import { type ClipTables, measuresState } from '../state/clipState.ts';
import type { ReviewData } from '../state/reviewState.ts';
import { sayReviewHead } from '../words/sayReviewHead.ts';
import { CardPanel } from './CardPanel.tsx';
import { panel as panelCommand, showPanel } from './commands/measuring.ts';
import { CoverPanel } from './covers/CoverPanel.tsx';
import { FramingPanel } from './framing/FramingPanel.tsx';
import { useRoomForBoth } from './layout/useRoomForBoth.ts';
import { MeasuresPanel } from './measures/MeasuresPanel.tsx';
import { EntryBar } from './session/EntryBar.tsx';
import { ParkedLine } from './session/ParkedLine.tsx';
import { SetUpPanel } from './setUp/SetUpPanel.tsx';
import { framingState } from './state/framingState.ts';
import { panelState } from './state/panelState.ts';
import { coverState, setUpState } from './state/pictureTools.ts';

type BesidePictureProps = {
  readonly sessionId: string;
  readonly data: ReviewData;
  readonly entry: Entry;
  readonly clip: Clip;
  readonly media: ClipMedia | undefined;
  readonly grade: EntryGrade;
  readonly exercise: Exercise | null;
  readonly catalogue: Catalogue;
  readonly tables: ClipTables | null;
};

/** What stands beside the picture: the exercise, and scorecard or measures; in a wide window both, once there are measures. */
export function BesidePicture(props: BesidePictureProps) {
  const { data, entry, clip, media, exercise, catalogue, tables } = props;
  const panel = panelState((state) => state.panel);
  const settingUp = setUpState((state) => state.settingUp === 'on');
  const covering = coverState((state) => state.covering === 'on');
  const measured = measuresState((state) => state.clipId === clip.id && state.measures?.measurement != null);
  const both = useRoomForBoth() && measured;
  const framing = framingState((state) => state.framing === 'on');
  const free = !settingUp && !covering && !framing;
  return (
    <>
      <div className="review-top">
        <fieldset className="as-if-none" disabled={data.readOnly}>
          <EntryBar entry={entry} clip={clip} catalogue={catalogue} review={data.review} />
          {!data.readOnly && <ParkedLine sessionId={props.sessionId} />}
        </fieldset>
        {!both && <PanelTabs clipId={clip.id} free={free} />}
      </div>
      <SessionCautions review={data.review} catalogue={catalogue} shown="folded" />
      <div className="review-panels" data-both={both}>
        {settingUp && media !== undefined && <SetUpPanel clip={clip} media={media} />}
        {covering && media !== undefined && tables !== null && (
          <CoverPanel clip={clip} media={media} table={tables.table} />
        )}
        {framing && media !== undefined && tables !== null && (
          <FramingPanel clip={clip} media={media} table={tables.table} />
        )}
        {free && (both || panel === 'card') && (
          <CardPanel
            sessionId={props.sessionId}
            data={data}
            entry={entry}
            grade={props.grade}
            exercise={exercise}
            catalogue={catalogue}
          />
        )}
        {(both || (free && panel === 'measures')) && (
          <MeasuresBeside both={both}>
            <MeasuresPanel
              key={clip.id}
              entry={entry}
              clip={clip}
              exercise={exercise}
              goal={data.review.trainee.goal}
              catalogue={catalogue}
              table={tables?.table ?? null}
            />
          </MeasuresBeside>
        )}
      </div>
    </>
  );
}

/** The measures; where the card stands beside them, the key that changes between both moves the focus. */
function MeasuresBeside({ both, children }: { readonly both: boolean; readonly children: React.ReactNode }) {
  const panel = panelState((state) => state.panel);
  const element = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (!both) return;
    if (panel === 'measures') element.current?.focus();
    else if (element.current?.contains(document.activeElement) === true)
      (document.activeElement as HTMLElement | null)?.blur();
  }, [both, panel]);
  return (
    <div ref={element} className="measures-panel" tabIndex={-1}>
      {children}
    </div>
  );
}

type PanelTabsProps = { readonly clipId: string; readonly free: boolean };

/** The scorecard, or what was measured; how many suggestions wait. */
function PanelTabs({ clipId, free }: PanelTabsProps) {
  const panel = panelState((state) => state.panel);
  const shortcuts = useShortcuts(panelCommand);
  const waiting = measuresState((state) => (state.clipId === clipId ? (state.measures?.suggestions.length ?? 0) : 0));
  return (
    <fieldset className="panel-tabs" aria-label={sayReviewHead('beside')}>
      <button type="button" aria-pressed={free && panel === 'card'} onClick={() => showPanel('card')}>
        {sayReviewHead('card')}
      </button>
      <button
        type="button"
        aria-pressed={free && panel === 'measures'}
        aria-keyshortcuts={shortcuts}
        onClick={() => showPanel('measures')}
      >
        {sayReviewHead('measures')}{' '}
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
