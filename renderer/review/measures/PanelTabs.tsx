import { KeyHint } from '../../commands/CommandButton.tsx';
import { measuresState } from '../../state/measuresState.ts';
import { panel as panelCommand, showPanel } from '../commands/measuring.ts';
import { coverState } from '../state/coverState.ts';
import { panelState } from '../state/panelState.ts';
import { setUpState } from '../state/setUpState.ts';

/** The scorecard, or what was measured; how many suggestions wait. */
export function PanelTabs({ clipId }: { readonly clipId: string }) {
  const panel = panelState((state) => state.panel);
  const settingUp = setUpState((state) => state.settingUp === 'on');
  const covering = coverState((state) => state.covering === 'on');
  const free = !settingUp && !covering;
  const waiting = measuresState((state) => (state.clipId === clipId ? (state.measures?.suggestions.length ?? 0) : 0));
  return (
    <fieldset className="panel-tabs" aria-label="Beside the picture">
      <button type="button" aria-pressed={free && panel === 'card'} onClick={() => showPanel('card')}>
        Card
      </button>
      <button type="button" aria-pressed={free && panel === 'measures'} onClick={() => showPanel('measures')}>
        Measures
        {waiting > 0 && (
          <span className="waiting-count">
            {waiting}
            <span className="visually-hidden"> {waiting === 1 ? 'suggestion waits' : 'suggestions wait'}</span>
          </span>
        )}
        <KeyHint command={panelCommand} />
      </button>
    </fieldset>
  );
}
