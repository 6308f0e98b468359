import { KeyHint } from '../../parts/KeyHint.tsx';
import { measuresState } from '../../state/measuresState.ts';
import { panelState, type ReviewPanel } from '../../state/panelState.ts';
import { setUpState, stopSettingUp } from '../../state/setUpState.ts';

/** The scorecard, or what was measured; how many suggestions wait. */
export function PanelTabs({ clipId }: { readonly clipId: string }) {
  const panel = panelState((state) => state.panel);
  const settingUp = setUpState((state) => state.settingUp === 'on');
  const show = (wanted: ReviewPanel): void => {
    stopSettingUp();
    panelState.getState().show(wanted);
  };
  const waiting = measuresState((state) => (state.clipId === clipId ? (state.measures?.suggestions.length ?? 0) : 0));
  return (
    <fieldset className="panel-tabs" aria-label="Beside the picture">
      <button type="button" aria-pressed={!settingUp && panel === 'card'} onClick={() => show('card')}>
        Card
      </button>
      <button type="button" aria-pressed={!settingUp && panel === 'measures'} onClick={() => show('measures')}>
        Measures
        {waiting > 0 && (
          <span className="waiting-count">
            {waiting}
            <span className="visually-hidden"> {waiting === 1 ? 'suggestion waits' : 'suggestions wait'}</span>
          </span>
        )}
        <KeyHint act="panel" />
      </button>
    </fieldset>
  );
}
