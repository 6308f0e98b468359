import type { ProgrammeFinding } from '../programme/finding.ts';
import { setsDone } from '../review/parts.ts';
import type { Entry } from '../review/review.ts';
import { type Rubric, withoutNoise } from '../rubric/rubric.ts';
import { programmeRule } from '../rubric/rules.ts';
import type { Stop } from './arithmetic.ts';
import { faultGroups } from './faultGroups.ts';
import type { EntryGrade, FindingRaise, Raise } from './grade.ts';
import { scoreWithout } from './gradeEntry.ts';
import { type JudgedEntry, stopWithout } from './judge.ts';
import { announce, type GroupOfEntry, largestFirst } from './raises.ts';

/** An entry of a session with its grade; `judged` null where the library doesn't hold its exercise. */
export type Part = {
  readonly entry: Entry;
  readonly judged: JudgedEntry | null;
  readonly grade: EntryGrade;
  readonly stops: number;
};

/** A session whose technique has a score. */
type Standing = {
  readonly parts: readonly Part[];
  readonly technique: number;
  readonly findings: readonly ProgrammeFinding[];
  readonly rubric: Rubric;
  /** The score that counts once technique, findings and stops are these. */
  readonly standing: (technique: number, findings: readonly ProgrammeFinding[], stop: Stop) => number;
};

/** How the session's technique gains without some groups; entries without a grade gain nothing. */
function techniqueGain(parts: readonly Part[]): (gone: readonly GroupOfEntry[]) => number {
  const graded = new Map(
    parts.flatMap((part) => (part.grade.state.kind === 'none' ? [] : [[part.entry.id, part] as const])),
  );
  const sets = [...graded.values()].reduce((sum, { entry }) => sum + setsDone(entry), 0);
  return (gone) => {
    let gained = 0;
    for (const [id, own] of Map.groupBy(gone, ({ entryId }) => entryId)) {
      const part = graded.get(id);
      if (part === undefined || part.judged === null) continue;
      const groups = own.map(({ group }) => group);
      const before = scoreWithout(part.judged, part.grade, []) ?? 0;
      const after = scoreWithout(part.judged, part.grade, groups) ?? before;
      gained += setsDone(part.entry) * (after - before);
    }
    return gained / sets;
  };
}

/** Each finding that costs points of its own, with what the session gains without it. */
function raisesOfFindings({ technique, findings, rubric, standing }: Standing, stop: Stop): FindingRaise[] {
  if (programmeRule(rubric).kind === 'share') return [];
  const score = standing(technique, findings, stop);
  return findings
    .filter(({ severity }) => severity !== 'keep')
    .map((finding) => {
      const left = findings.filter((one) => one !== finding);
      const { id: findingId, severity, entryIds } = finding;
      const gain = withoutNoise(standing(technique, left, stop) - score);
      return { kind: 'finding', findingId, entryIds, severity, flagIds: [], reps: 0, gain };
    });
}

/** What the session would gain without each group of each entry, and without each finding where these cost points. */
export function raisesOfSession(session: Standing): Raise[] {
  const { parts, technique, findings, standing } = session;
  const stops = parts.reduce((sum, part) => sum + part.stops, 0);
  const stop = stopWithout(stops, []);
  const score = standing(technique, findings, stop);
  const groups = parts.flatMap(({ entry, judged }) =>
    judged === null ? [] : faultGroups(judged).map((group) => ({ entryId: entry.id, group })),
  );
  const gained = techniqueGain(parts);
  const raises = announce(groups, (gone) => {
    const left = stopWithout(
      stops,
      gone.map(({ group }) => group),
    );
    const changed = withoutNoise(technique + gained(gone));
    return withoutNoise(standing(changed, findings, left) - score);
  });
  return largestFirst([...raises, ...raisesOfFindings(session, stop)]);
}
