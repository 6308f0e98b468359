import { type Rubric, type Severity, withoutNoise } from '../rubric/rubric.ts';
import { programmeRule } from '../rubric/rules.ts';

/** What the programme does to a session's score. */
export type ProgrammePart = {
  /** The programme by itself, 0-100. */
  readonly score: number;
  /** Points it takes off technique, where the rubric counts so; null where it counts by a share. */
  readonly cost: number | null;
};

/**
 * The programme by the severities of what was found in it. Where it costs points: their sum, at most as many as the rubric
 * says, and the rest of 100 as its score; else 100 × the product of (1 − cost), multiplied in a fixed order.
 */
export function programmePart(severities: readonly Severity[], rubric: Rubric): ProgrammePart {
  const rule = programmeRule(rubric);
  if (rule.kind === 'cost') {
    const cost = Math.min(rule.most, withoutNoise(severities.reduce((sum, severity) => sum + rule.cost[severity], 0)));
    return { score: withoutNoise(100 - cost), cost };
  }
  const costs = severities.map((severity) => rubric.cost[severity]).sort((a, b) => b - a);
  return { score: withoutNoise(100 * costs.reduce((left, cost) => left * (1 - cost), 1)), cost: null };
}
