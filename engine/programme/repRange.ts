import type { Goal } from '../exercises/exercise.ts';
import type { ProgrammeFinding } from '../grading/grade.ts';
import type { Speech } from '../language/speech.ts';
import type { PlannedEntry } from './plannedEntry.ts';

const growth = { from: 5, to: 30 } as const;
const strength = { from: 1, to: 6 } as const;
/** More repetitions in reserve than this, and a set counts as easy. */
const hardUpToInReserve = 4;

const plannedAt = {
  one: {
    growth: '{exercise} is planned at {reps} rep a set, and the goal is growth.',
    strength: '{exercise} is planned at {reps} rep a set, and the goal is strength.',
    skill: '{exercise} is planned at {reps} rep a set, and the goal is skill.',
  },
  other: {
    growth: '{exercise} is planned at {reps} reps a set, and the goal is growth.',
    strength: '{exercise} is planned at {reps} reps a set, and the goal is strength.',
    skill: '{exercise} is planned at {reps} reps a set, and the goal is skill.',
  },
} as const;

function outside(planned: PlannedEntry, goal: Goal, { say }: Speech): ProgrammeFinding | null {
  const { entry, exercise, plan } = planned;
  const range = goal === 'growth' ? growth : goal === 'strength' && exercise.compound ? strength : null;
  if (plan === undefined || range === null || exercise.beginsWith === 'hold') return null;
  if (plan.reps >= range.from && plan.reps <= range.to) return null;
  const forGrowth = goal === 'growth';
  return {
    id: `rep-range-${entry.id}`,
    kind: 'rep-range',
    weight: 'adjust',
    entryIds: [entry.id],
    what: say(plannedAt[plan.reps === 1 ? 'one' : 'other'][goal], { exercise: exercise.name, reps: plan.reps }),
    why: forGrowth
      ? say(
          'Muscle grows about alike over a wide span of reps when sets come near failure; outside it, sets cost more than they give.',
        )
      : say('Strength in a lift follows the load most closely, and heavy loads leave few reps.'),
    suggestion: say('Choose a load that ends a set between {from} and {to} reps.', range),
    source: forGrowth
      ? say('span: common practice; loads compared: Schoenfeld et al. 2017, J Strength Cond Res 31:3508')
      : 'Schoenfeld et al. 2017, J Strength Cond Res 31:3508',
  };
}

function easy(planned: PlannedEntry, goal: Goal, { say }: Speech): ProgrammeFinding | null {
  const { entry, exercise, plan } = planned;
  if (goal !== 'growth' || plan?.repsInReserve === undefined || plan.repsInReserve <= hardUpToInReserve) return null;
  return {
    id: `effort-${entry.id}`,
    kind: 'effort',
    weight: 'prefer',
    entryIds: [entry.id],
    what: say('{exercise} is planned to end with {reps} reps in reserve.', {
      exercise: exercise.name,
      reps: plan.repsInReserve,
    }),
    why: say('For growth, sets that end nearer to failure tend to give a little more.'),
    suggestion: say('Add load or reps until about {reps} are left, as long as technique holds.', {
      reps: hardUpToInReserve - 1,
    }),
    source: say('Refalo et al. 2023, Sports Med 53:649'),
  };
}

/** Plans whose reps don't fit the goal: growth 5-30 and near failure, strength 1-6 on lifts of several joints. */
export function repRangeFindings(entries: readonly PlannedEntry[], goal: Goal, speech: Speech): ProgrammeFinding[] {
  return entries
    .flatMap((planned) => [outside(planned, goal, speech), easy(planned, goal, speech)])
    .filter((one) => one !== null);
}
