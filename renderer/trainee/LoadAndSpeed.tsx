import { useEffect, useState } from 'react';
import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import { read } from '../bridge/read.ts';
import { SpeedChart } from './SpeedChart.tsx';
import { type SetSpeed, speedsByExercise } from './speedLines.ts';

type LoadAndSpeedProps = {
  readonly traineeId: string;
  readonly units: 'kg' | 'lb';
  readonly catalogue: Catalogue;
};

/** How fast each load went up over the weeks; nothing while no exercise was measured with two loads. */
export function LoadAndSpeed({ traineeId, units, catalogue }: LoadAndSpeedProps) {
  const [sets, setSets] = useState<readonly SetSpeed[]>([]);
  useEffect(() => {
    let stale = false;
    setSets([]);
    void read('trainees.speeds', { traineeId }).then((answer) => {
      if (answer !== null && !stale) setSets(answer);
    });
    return () => {
      stale = true;
    };
  }, [traineeId]);
  if (sets.length === 0) return null;
  return (
    <section aria-label="Load and speed">
      <h2>Load and speed</h2>
      <p className="soft">
        The mean speed on the way up of each set’s fastest rep. The same load faster, or more load at the same speed, is
        progress; the newest session stands out.
      </p>
      <div className="trend-charts">
        {speedsByExercise(sets).map((speeds) => (
          <SpeedChart
            key={speeds.exercise}
            name={catalogue.exercises.find(({ id }) => id === speeds.exercise)?.name ?? speeds.exercise}
            speeds={speeds}
            units={units}
          />
        ))}
      </div>
    </section>
  );
}
