import type { Exercise } from '../exercises/exercise.ts';
import { parseTempo, type Tempo } from '../time/tempo.ts';
import type { ProgrammeFinding } from './finding.ts';
import { idsOf, type Lift, namesOf } from './lift.ts';

/** A pause of this long or longer at one end is a hold, not a turn. */
const holdS = 1;

/** Lifts whose shortened end is easily held for show: the seconds are worth more in the stretch. */
const pulls: ReadonlySet<string> = new Set(['vertical pull', 'horizontal row', 'curl']);

/** Exercises whose target asks for a hold at the shortened end, or that have no stretched end to stop at. */
const isMeantToHold = ({ beginsWith, targets: { tempo } }: Exercise): boolean =>
  beginsWith === 'hold' || tempo.growth.pauseShortenedS[0] >= holdS || tempo.growth.pauseStretchedS[1] === 0;

type Hold = { readonly lift: Lift; readonly tempo: Tempo };

/**
 * Whether the shortened end gets seconds that the stretched end should have: any hold there for a pull that is longer than the one in
 * the stretch; elsewhere one beyond the target, which is a rest, where there is none in the stretch.
 */
function isHeldShort({ pauseShortenedS, pauseStretchedS }: Tempo, { pattern, targets }: Exercise): boolean {
  if (pauseShortenedS < holdS) return false;
  return pulls.has(pattern)
    ? pauseStretchedS < pauseShortenedS
    : pauseStretchedS === 0 && pauseShortenedS > targets.tempo.growth.pauseShortenedS[1];
}

/** The set of a lift that is held longest at the shortened end. */
function holdOf(lift: Lift): Hold[] {
  const { exercise, sets } = lift;
  if (isMeantToHold(exercise)) return [];
  const tempos = sets.flatMap(({ tempo }) => (tempo === undefined ? [] : (parseTempo(tempo) ?? [])));
  const [held] = tempos
    .filter((tempo) => isHeldShort(tempo, exercise))
    .sort((a, b) => b.pauseShortenedS - a.pauseShortenedS);
  return held === undefined ? [] : [{ lift, tempo: held }];
}

const written = ({ eccentricS, pauseStretchedS, concentricS, pauseShortenedS }: Tempo): string =>
  [eccentricS, pauseStretchedS, concentricS ?? 'X', pauseShortenedS].join('-');

/** A slow way down takes this long at least. */
const slowS = 3;

/** The same seconds in a slower lowering and a stop in the stretch. */
const movedDown = ({ lift, tempo }: Hold): { entryId: string; tempo: string } => ({
  entryId: lift.entry.id,
  tempo: written({
    ...tempo,
    eccentricS: Math.max(tempo.eccentricS, slowS),
    pauseStretchedS: Math.max(tempo.pauseStretchedS, holdS),
    pauseShortenedS: 0,
  }),
});

/** For growth: seconds that are held where the muscles are short, said once for all lifts. */
export function holdFindings(lifts: readonly Lift[]): ProgrammeFinding[] {
  const holds = lifts.flatMap(holdOf);
  const [first, ...others] = holds;
  if (first === undefined) return [];
  const held = holds.map(({ lift }) => lift);
  const { exercise } = first.lift;
  const seconds = Math.max(...holds.map(({ tempo }) => tempo.pauseShortenedS));
  return [
    {
      id: `short-end-pause-${idsOf(held).join('-')}`,
      kind: 'shortened-end-pause',
      severity: 'prefer',
      restsOn: 'plan',
      entryIds: idsOf(held),
      message:
        others.length === 0
          ? {
              id: 'shortenedEndPause',
              values: {
                exercise: exercise.name,
                seconds,
                shortenedEnd: exercise.shortenedEnd,
                stretchedEnd: exercise.stretchedEnd,
              },
            }
          : { id: 'shortenedEndPauses', values: { exercises: namesOf(held), seconds } },
      advice: { kind: 'tempo', changes: holds.map(movedDown) },
    },
  ];
}
