import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import type { Exercise, Fault } from '../../engine/exercises/exercise.ts';
import { parseRubric, type Rubric } from '../../engine/rubric/rubric.ts';

/** The rubric that ships, in its first version unless another is asked for. */
export function shippedRubric(version = 1): Rubric {
  const file = path.join(import.meta.dirname, `../../seeds/rubric/v${version}.json`);
  const parsed = parseRubric(JSON.parse(readFileSync(file, 'utf8')));
  if (!parsed.ok) throw new Error(parsed.sentence);
  return parsed.rubric;
}

/** A fault with stand-in words. */
export function fault(id: string, criterion: string): Fault {
  return {
    id,
    criterion,
    name: id,
    seen: 'it is seen',
    why: 'It matters.',
    source: 'common practice',
    cue: { outcome: 'reach the line', body: 'bend further' },
    drill: 'Practise it.',
    proof: 'Film it again.',
    usualSeverity: 'adjust',
  };
}

const tempo = {
  eccentricS: [2, 3],
  pauseStretchedS: [0, 1],
  concentricS: null,
  pauseShortenedS: [0, 1],
} satisfies Exercise['targets']['tempo']['growth'];

/** A squat with the shares that the arithmetic is checked with; change what a test needs. */
export function exercise(change: Partial<Exercise> = {}): Exercise {
  return {
    id: 'squat',
    name: 'Squat',
    pattern: 'squat',
    implement: 'barbell',
    compound: true,
    beginsWith: 'eccentric',
    stretchedEnd: 'bottom, deepest point',
    shortenedEnd: 'top, standing',
    lowerEnd: 'stretched',
    trackedPoint: 'disc',
    bestView: 'side',
    judgedFrom: {
      side: ['depth', 'eccentricTempo', 'pauses', 'barPath', 'headPosition', 'spinePosition'],
      front: ['eccentricTempo', 'pauses'],
      rear: ['eccentricTempo'],
    },
    criteria: [
      { id: 'depth', share: 0.25 },
      { id: 'eccentricTempo', share: 0.2 },
      { id: 'pauses', share: 0.1 },
      { id: 'barPath', share: 0.2 },
      { id: 'headPosition', share: 0.1 },
      { id: 'spinePosition', share: 0.15 },
    ],
    targets: {
      tempo: { growth: tempo, strength: tempo, skill: tempo },
      depth: 'crease below knee top',
      path: { shape: 'vertical', toleranceM: 0.05 },
      headDeg: 20,
      spine: 'shape of the set-up',
    },
    hardestAt: 'stretched',
    ladder: { easier: [], harder: [], betterSuited: [] },
    muscles: { direct: ['quadriceps'], indirect: ['glutes'] },
    cautions: [],
    faults: [
      fault('shortOfDepth', 'depth'),
      fault('quickEccentric', 'eccentricTempo'),
      fault('noLongPause', 'pauses'),
      fault('pathForward', 'barPath'),
      fault('headUp', 'headPosition'),
      fault('rounding', 'spinePosition'),
      fault('unsafeSetUp', 'spinePosition'),
    ],
    ...change,
  };
}

/** A catalogue of the shipped rubric and the given exercises. */
export function catalogueOf(...exercises: readonly Exercise[]): Catalogue {
  return { rubric: shippedRubric(), exercises, cautions: [] };
}
