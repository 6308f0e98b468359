import type { Exercise } from '../exercises/exercise.ts';
import { parseTempo, type Tempo } from '../time/tempo.ts';
import type { ProgrammeFinding } from './finding.ts';
import { idsOf, type Lift, namesOf } from './lift.ts';

/** A pause of this long or longer at one end is a hold, not a turn. */
const holdS = 1;

/** Lifts whose short end is easily held for show: the seconds are worth more in the stretch. */
const pulls: ReadonlySet<string> = new Set(['vertical pull', 'horizontal row', 'curl']);

/** Exercises whose target asks for a hold at the short end, or that have no long end to stop at. */
const isMeantToHold = ({ beginsWith, targets: { tempo } }: Exercise): boolean =>
  beginsWith === 'hold' || tempo.growth.shortPauseS[0] >= holdS || tempo.growth.longPauseS[1] === 0;

type Hold = { readonly lift: Lift; readonly tempo: Tempo };

/**
 * Whether the short end gets seconds that the long end should have: any hold there for a pull that is longer than the one in
 * the stretch; elsewhere one beyond the target, which is a rest, where there is none in the stretch.
 */
function isHeldShort({ shortPauseS, longPauseS }: Tempo, { pattern, targets }: Exercise): boolean {
  if (shortPauseS < holdS) return false;
  return pulls.has(pattern)
    ? longPauseS < shortPauseS
    : longPauseS === 0 && shortPauseS > targets.tempo.growth.shortPauseS[1];
}

/** The set of a lift that is held longest at the short end. */
function holdOf(lift: Lift): Hold[] {
  const { exercise, sets } = lift;
  if (isMeantToHold(exercise)) return [];
  const tempos = sets.flatMap(({ tempo }) => (tempo === undefined ? [] : (parseTempo(tempo) ?? [])));
  const [held] = tempos.filter((tempo) => isHeldShort(tempo, exercise)).sort((a, b) => b.shortPauseS - a.shortPauseS);
  return held === undefined ? [] : [{ lift, tempo: held }];
}

const written = ({ eccentricS, longPauseS, concentricS, shortPauseS }: Tempo): string =>
  [eccentricS, longPauseS, concentricS ?? 'X', shortPauseS].join('-');

/** A slow way down takes this long at least. */
const slowS = 3;

/** The same seconds in a slower lowering and a stop in the stretch. */
const movedDown = ({ lift, tempo }: Hold): { entryId: string; tempo: string } => ({
  entryId: lift.entry.id,
  tempo: written({
    ...tempo,
    eccentricS: Math.max(tempo.eccentricS, slowS),
    longPauseS: Math.max(tempo.longPauseS, holdS),
    shortPauseS: 0,
  }),
});

/** For growth: seconds that are held where the muscles are short, said once for all lifts. */
export function holdFindings(lifts: readonly Lift[]): ProgrammeFinding[] {
  const holds = lifts.flatMap(holdOf);
  const [first, ...others] = holds;
  if (first === undefined) return [];
  const held = holds.map(({ lift }) => lift);
  const { exercise } = first.lift;
  const seconds = Math.max(...holds.map(({ tempo }) => tempo.shortPauseS));
  return [
    {
      id: `short-end-pause-${idsOf(held).join('-')}`,
      kind: 'short-end-pause',
      weight: 'prefer',
      restsOn: 'plan',
      entryIds: idsOf(held),
      message:
        others.length === 0
          ? {
              id: 'shortEndPause',
              values: { exercise: exercise.name, seconds, shortEnd: exercise.shortEnd, longEnd: exercise.longEnd },
            }
          : { id: 'shortEndPauses', values: { exercises: namesOf(held), seconds } },
      advice: { kind: 'tempo', changes: holds.map(movedDown) },
    },
  ];
}
