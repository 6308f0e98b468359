import { type KeyboardEvent, useEffect, useRef } from 'react';
import type { ClipMedia } from '../../../electron/contract/clips.ts';
import { measuresState } from '../../state/measuresState.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import { chooseSetUpTool, leaveSettingUp, setPoints, stepBackInSetUp } from '../commands/settingUp.ts';
import { pointsWanted, setUpState, setUpTools } from '../state/setUpState.ts';
import { SetUpFacts } from './SetUpFacts.tsx';
import { SetUpFields } from './SetUpFields.tsx';
import { setUpHints, setUpPointNames, setUpToolNames, usualPoints } from './setUpTools.ts';

/** The panel for pointing out what measuring can't find; it replaces the card, so that the picture stays large. */
export function SetUpPanel({ media }: { readonly media: ClipMedia }) {
  const context = useReview();
  const { settingUp, tool, points, focusNext } = setUpState();
  const setUp = measuresState((state) => (state.clipId === media.clipId ? (state.measures?.setUp ?? null) : null));
  const chosen = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (settingUp === 'off' || focusNext !== 'tools') return;
    chosen.current?.focus();
    setUpState.setState({ focusNext: null });
  }, [settingUp, focusNext]);
  if (settingUp === 'off') return null;

  const left = pointsWanted[tool] - points.length;
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') setUpState.setState({ points: usualPoints(tool, media), focusNext: 0 });
    else if (event.key === 'Escape') stepBackInSetUp(context);
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <section className="set-up" aria-label="Measuring set-up">
      <header>
        <h2>Measuring set-up</h2>
        <button type="button" onClick={() => leaveSettingUp(context)}>
          Done
        </button>
      </header>
      <p className="soft">
        Point out on the picture what can’t be found by itself. With the keys: Enter on a tool puts its points in the
        middle, arrows move a point, Shift with an arrow moves it ten pixels, Enter sets it.
      </p>
      <fieldset className="set-up-tools" aria-label="What to point out" onKeyDown={onKeyDown}>
        {setUpTools.map((one) => (
          <label key={one}>
            <input
              ref={one === tool ? chosen : null}
              type="radio"
              name="set-up-tool"
              aria-label={setUpToolNames[one]}
              aria-describedby={`set-up-${one}`}
              value={one}
              checked={one === tool}
              onChange={() => chooseSetUpTool(one)}
            />
            <strong>{setUpToolNames[one]}</strong>
            <span id={`set-up-${one}`} className="soft">
              {setUpHints[one]}
            </span>
          </label>
        ))}
      </fieldset>
      <p className="set-up-next" role="status">
        {points.length === 0 && 'Nothing is being placed.'}
        {points.length > 0 && left > 0 && `Next: ${setUpPointNames[tool][points.length]}.`}
        {points.length > 0 && left <= 0 && (
          <button type="button" className="primary" onClick={() => void setPoints(context)}>
            Set {setUpToolNames[tool].toLowerCase()}
          </button>
        )}
      </p>
      {setUp !== null && (
        <>
          <SetUpFields setUp={setUp} />
          <SetUpFacts setUp={setUp} />
        </>
      )}
    </section>
  );
}
