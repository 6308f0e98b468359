import { Trash2 } from 'lucide-react';
import type { SetUp } from '../../../engine/recording/setUp.ts';
import { counted, plain } from '../../base/figures.ts';
import { changeSetUp, clearClicks } from '../commands/settingUp.ts';

type Fact = { readonly name: string; readonly forget: () => void };

/** What was pointed out, each with a button to forget it. */
function factsOf({ clicks, knownLength, plumb, depthClicks, backClicks }: SetUp): readonly Fact[] {
  const clicksOf = (what: 'disc' | 'point'): number => clicks.filter((one) => one.what === what).length;
  const facts: readonly (Fact | false)[] = [
    clicksOf('disc') > 0 && {
      name: `Disc: ${counted(clicksOf('disc'), 'click')}`,
      forget: () => void clearClicks('disc'),
    },
    clicksOf('point') > 0 && {
      name: `Point: ${counted(clicksOf('point'), 'click')}`,
      forget: () => void clearClicks('point'),
    },
    knownLength !== null && {
      name: `Known length: ${plain(knownLength.lengthM * 100)} cm`,
      forget: () => void changeSetUp({ knownLength: null }),
    },
    plumb !== null && { name: 'Upright', forget: () => void changeSetUp({ plumb: null }) },
    ...depthClicks.map(({ frame }) => ({
      name: `Hip and knee at frame ${frame}`,
      forget: () => void changeSetUp({ depthClicks: depthClicks.filter((one) => one.frame !== frame) }),
    })),
    ...backClicks.map(({ frame }) => ({
      name: `Back at frame ${frame}`,
      forget: () => void changeSetUp({ backClicks: backClicks.filter((one) => one.frame !== frame) }),
    })),
  ];
  return facts.filter((fact) => fact !== false);
}

export function SetUpFacts({ setUp }: { readonly setUp: SetUp }) {
  const facts = factsOf(setUp);
  if (facts.length === 0) return null;
  return (
    <ul className="set-up-facts" aria-label="Pointed out so far">
      {facts.map(({ name, forget }) => (
        <li key={name}>
          {name}
          <button type="button" className="icon-button" aria-label={`Forget: ${name}`} onClick={forget}>
            <Trash2 aria-hidden="true" />
          </button>
        </li>
      ))}
    </ul>
  );
}
