import { useId } from 'react';
import type { PhaseName, RepMeasurement } from '../../../engine/motion/measurement.ts';
import { decimal, figureWords, inSeconds, phaseNames } from '../../base/measureWords.ts';
import { sayMeasures } from '../../words/sayMeasures.ts';
import { outsideS, type TempoBand, type TempoToMeet } from './tempoTarget.ts';

type TempoBarsProps = {
  readonly reps: readonly RepMeasurement[];
  readonly tempo: TempoToMeet | null;
  readonly current: number | null;
};

const width = 84;
const rowHeight = 15;

/** The longest time that any phase has to show, in seconds. */
function longestS(reps: readonly RepMeasurement[], tempo: TempoToMeet | null): number {
  const measured = reps.flatMap(({ durationsS }) =>
    phaseNames.map((phase) => (durationsS[phase]?.value ?? 0) + (durationsS[phase]?.plusMinus ?? 0)),
  );
  const asked =
    tempo === null
      ? []
      : phaseNames.map((phase) => tempo.bands[phase]?.passes?.toS ?? tempo.bands[phase]?.asked[1] ?? 0);
  return Math.max(0.5, ...measured, ...asked) * 1.05;
}

/** Each phase of each rep as a bar beside its target time. */
export function TempoBars({ reps, tempo, current }: TempoBarsProps) {
  const mostS = longestS(reps, tempo);
  return (
    <figure className="plot tempo-bars">
      <figcaption>
        <strong>{sayMeasures('tempo')}</strong>{' '}
        <span className="soft">
          {tempo === null
            ? sayMeasures('againstNothing')
            : tempo.from === 'plan'
              ? sayMeasures('againstPlan', { tempo: tempo.words })
              : sayMeasures('againstTarget', { target: tempo.words })}
        </span>
      </figcaption>
      <div className="tempo-phases">
        {phaseNames.map((phase) => (
          <PhaseBars
            key={phase}
            phase={phase}
            reps={reps}
            band={tempo?.bands[phase] ?? null}
            mostS={mostS}
            current={current}
          />
        ))}
      </div>
    </figure>
  );
}

type PhaseBarsProps = {
  readonly phase: PhaseName;
  readonly reps: readonly RepMeasurement[];
  readonly band: TempoBand | null;
  readonly mostS: number;
  readonly current: number | null;
};

const bandWords = (band: TempoBand | null): string => {
  if (band === null) return sayMeasures('noTarget');
  const [from, to] = band.asked;
  return from === to
    ? sayMeasures('target', { seconds: decimal(from, 1) })
    : sayMeasures('targetBetween', { from: decimal(from, 1), to: decimal(to, 1) });
};

function PhaseBars({ phase, reps, band, mostS, current }: PhaseBarsProps) {
  const titleId = useId();
  const height = reps.length * rowHeight;
  const at = (seconds: number): number => (seconds / mostS) * width;
  const spoken = reps.map((rep) => {
    const duration = rep.durationsS[phase];
    const time =
      duration === null
        ? sayMeasures('none')
        : sayMeasures('withUnit', { figure: figureWords(inSeconds(duration)), unit: 's' });
    return sayMeasures('repTook', { rep: rep.index, time });
  });
  return (
    <div>
      <p className="tempo-phase">
        {sayMeasures(phase)} <span className="soft">{bandWords(band)}</span>
      </p>
      <svg viewBox={`-18 0 ${width + 104} ${height}`} role="img" aria-labelledby={titleId}>
        <title id={titleId}>
          {sayMeasures('phaseBars', { phase: sayMeasures(phase), target: bandWords(band), reps: spoken.join('; ') })}
        </title>
        {band?.passes != null && (
          <rect
            className="tempo-band"
            x={at(Math.max(0, band.passes.fromS))}
            width={at(band.passes.toS) - at(Math.max(0, band.passes.fromS))}
            height={height}
          />
        )}
        {band !== null &&
          [...new Set(band.asked)].map((seconds) => (
            <path key={seconds} className="tempo-asked" d={`M${at(seconds)} 0V${height}`} />
          ))}
        {reps.map((rep, row) => {
          const duration = rep.durationsS[phase];
          const y = row * rowHeight;
          const away = duration === null ? 0 : outsideS(duration, band);
          return (
            <g key={rep.index} data-current={rep.index === current}>
              <text className="tempo-rep" x={-6} y={y + rowHeight / 2} textAnchor="end" dominantBaseline="central">
                {rep.index}
              </text>
              {duration !== null && (
                <>
                  <rect
                    className="tempo-bar"
                    y={y + 4}
                    width={Math.max(1, at(duration.value))}
                    height={rowHeight - 8}
                  />
                  <path
                    className="tempo-margin"
                    d={`M${at(Math.max(0, duration.value - duration.plusMinus))} ${y + rowHeight / 2}H${at(duration.value + duration.plusMinus)}`}
                  />
                  <text
                    x={at(Math.max(duration.value + duration.plusMinus, band?.passes?.toS ?? band?.asked[1] ?? 0)) + 5}
                    y={y + rowHeight / 2}
                    dominantBaseline="central"
                  >
                    {away === 0
                      ? decimal(duration.value, 1)
                      : sayMeasures('missed', {
                          seconds: decimal(duration.value, 1),
                          away: away < 0 ? 'short' : 'long',
                        })}
                  </text>
                </>
              )}
            </g>
          );
        })}
      </svg>
    </div>
  );
}
