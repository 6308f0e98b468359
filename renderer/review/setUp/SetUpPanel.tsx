import { Trash2 } from 'lucide-react';
import { type KeyboardEvent, useEffect, useId, useRef } from 'react';
import type { ClipMedia } from '../../../electron/contract/clips.ts';
import { toldFrame } from '../../../engine/framing/toldTime.ts';
import { followedParts } from '../../../engine/motion/measurement.ts';
import type { Click, SetUp } from '../../../engine/recording/setUp.ts';
import type { Clip } from '../../../engine/review/review.ts';
import { sayFollowedPart } from '../../../engine/wording/sayFollowed.ts';
import { NumberField } from '../../base/fields.tsx';
import { plain } from '../../base/figures.ts';
import { measuresState } from '../../state/clipState.ts';
import { deskLanguage } from '../../words/deskLanguage.ts';
import { saySetUp } from '../../words/saySetUp.ts';
import { useReview } from '../commands/ReviewDeskProvider.tsx';
import {
  changeSetUp,
  chooseSetUpTool,
  clearClicks,
  leaveSettingUp,
  setPoints,
  stepBackInSetUp,
} from '../commands/settingUp.ts';
import { pointsWanted, setUpState, setUpTools } from '../state/pictureTools.ts';
import { setUpHint, setUpPointName, setUpToolName, usualPoints } from './setUpTools.ts';

/** The panel for pointing out what measuring can't find; it replaces the card, so that the picture stays large. */
export function SetUpPanel({ clip, media }: { readonly clip: Clip; readonly media: ClipMedia }) {
  const context = useReview();
  const { settingUp, tool, points, focusNext } = setUpState();
  const setUp = measuresState((state) => (state.clipId === media.clipId ? (state.measures?.setUp ?? null) : null));
  const chosen = useRef<HTMLInputElement>(null);
  const group = useId();
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
    <section className="set-up" aria-label={saySetUp('title')}>
      <header>
        <h2>{saySetUp('title')}</h2>
        <button type="button" onClick={() => leaveSettingUp(context)}>
          {saySetUp('done')}
        </button>
      </header>
      <p className="soft">{saySetUp('intro')}</p>
      <fieldset className="set-up-tools" aria-label={saySetUp('tools')} onKeyDown={onKeyDown}>
        {setUpTools.map((one) => (
          <label key={one}>
            <input
              ref={one === tool ? chosen : null}
              type="radio"
              name={group}
              aria-label={setUpToolName(one)}
              aria-describedby={`set-up-${one}`}
              value={one}
              checked={one === tool}
              onChange={() => chooseSetUpTool(one)}
            />
            <strong>{setUpToolName(one)}</strong>
            <span id={`set-up-${one}`} className="soft">
              {setUpHint(one)}
            </span>
          </label>
        ))}
      </fieldset>
      <p className="set-up-next" role="status">
        {points.length === 0 && saySetUp('nothingPlaced')}
        {points.length > 0 && left > 0 && saySetUp('nextPoint', { point: setUpPointName(tool, points.length) })}
        {points.length > 0 && left <= 0 && (
          <button type="button" className="primary" onClick={() => void setPoints(context)}>
            {saySetUp('set', { tool: setUpToolName(tool) })}
          </button>
        )}
      </p>
      {setUp !== null && (
        <>
          <SetUpFields setUp={setUp} />
          <SetUpFacts setUp={setUp} clip={clip} />
        </>
      )}
    </section>
  );
}

type Fact = { readonly name: string; readonly forget: () => void };

/** What was pointed out, each with a button to forget it. */
function factsOf({ clicks, knownLength, plumb, depthClicks, backClicks }: SetUp, clip: Clip): readonly Fact[] {
  const clicksOf = (what: Click['what']): number => clicks.filter((one) => one.what === what).length;
  const clicksName = (what: Click['what']): string =>
    saySetUp('clicks', { tool: setUpToolName(what), count: clicksOf(what) });
  const facts: readonly (Fact | false)[] = [
    clicksOf('disc') > 0 && {
      name: clicksName('disc'),
      forget: () => void clearClicks('disc'),
    },
    clicksOf('point') > 0 && {
      name: clicksName('point'),
      forget: () => void clearClicks('point'),
    },
    clicksOf('lifter') > 0 && {
      name: clicksName('lifter'),
      forget: () => void clearClicks('lifter'),
    },
    knownLength !== null && {
      name: saySetUp('lengthOf', { centimetres: plain(knownLength.lengthM * 100) }),
      forget: () => void changeSetUp({ knownLength: null }),
    },
    plumb !== null && { name: saySetUp('plumb'), forget: () => void changeSetUp({ plumb: null }) },
    ...depthClicks.map(({ frame }) => ({
      name: saySetUp('depthAt', { frame: toldFrame(clip, frame) }),
      forget: () => void changeSetUp({ depthClicks: depthClicks.filter((one) => one.frame !== frame) }),
    })),
    ...backClicks.map(({ frame }) => ({
      name: saySetUp('backAt', { frame: toldFrame(clip, frame) }),
      forget: () => void changeSetUp({ backClicks: backClicks.filter((one) => one.frame !== frame) }),
    })),
  ];
  return facts.filter((fact) => fact !== false);
}

function SetUpFacts({ setUp, clip }: { readonly setUp: SetUp; readonly clip: Clip }) {
  const facts = factsOf(setUp, clip);
  if (facts.length === 0) return null;
  return (
    <ul className="set-up-facts" aria-label={saySetUp('facts')}>
      {facts.map(({ name, forget }) => (
        <li key={name}>
          {name}
          <button
            type="button"
            className="icon-button"
            aria-label={saySetUp('remove', { fact: name })}
            onClick={forget}
          >
            <Trash2 aria-hidden="true" />
          </button>
        </li>
      ))}
    </ul>
  );
}

const followChoices = ['auto', 'disc', ...followedParts] as const;

/** Diameter of the disc, the known length, which way the lifter faces, and what is followed. */
function SetUpFields({ setUp }: { readonly setUp: SetUp }) {
  const tool = setUpState((state) => state.tool);
  const lengthM = setUpState((state) => state.lengthM);
  const language = deskLanguage((state) => state.language);
  return (
    <div className="set-up-fields">
      <CentimetreField
        label={saySetUp('discDiameter')}
        metres={setUp.discDiameterM}
        onSave={(discDiameterM) => void changeSetUp({ discDiameterM })}
      />
      <label className="field-inline">
        <span>{saySetUp('facing')}</span>
        <select
          value={setUp.facing ?? ''}
          onChange={({ target: { value } }) =>
            void changeSetUp({ facing: value === 'left' || value === 'right' ? value : null })
          }
        >
          <option value="">{saySetUp('facingAuto')}</option>
          <option value="left">{saySetUp('facingLeft')}</option>
          <option value="right">{saySetUp('facingRight')}</option>
        </select>
      </label>
      <label className="field-inline">
        <span>{saySetUp('follow')}</span>
        <select
          value={setUp.follow}
          onChange={({ target: { value } }) => {
            const follow = followChoices.find((choice) => choice === value);
            if (follow) void changeSetUp({ follow });
          }}
        >
          {followChoices.map((choice) => (
            <option key={choice} value={choice}>
              {choice === 'auto' ? saySetUp('followAuto') : sayFollowedPart(choice, language)}
            </option>
          ))}
        </select>
      </label>
      {tool === 'length' && (
        <CentimetreField
          label={saySetUp('knownLengthIs')}
          metres={lengthM}
          onSave={(metres) => setUpState.setState({ lengthM: metres })}
        />
      )}
    </div>
  );
}

type CentimetreFieldProps = {
  readonly label: string;
  readonly metres: number;
  readonly onSave: (metres: number) => void;
};

/** A length typed in centimetres, 1-500. */
function CentimetreField({ label, metres, onSave }: CentimetreFieldProps) {
  return (
    <NumberField
      label={label}
      unit="cm"
      shown={plain(metres * 100)}
      accepts={(centimetres) => centimetres >= 1 && centimetres <= 500}
      onSave={(centimetres) => onSave(centimetres / 100)}
    />
  );
}
