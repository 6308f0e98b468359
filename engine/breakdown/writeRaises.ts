import { type Block, strong, text } from '../document/document.ts';
import type { GradeState, Raise } from '../grading/grade.ts';
import { shownGain } from '../rubric/shownNumbers.ts';
import { type RaiseSource, sayRaise } from '../sheet/sayRaise.ts';
import type { Source } from './source.ts';

const mostRaises = 3;

/** Whether a gain is above zero as printed, to two decimals. */
const isGain = ({ gain }: Raise): boolean => shownGain(gain, 2) > 0;

type Graded = { readonly state: GradeState; readonly override: unknown; readonly raises: readonly Raise[] };

/** Why no gain is said: a grade set by hand, pain that holds all of it back, a stop that still stands, or nothing to gain. */
function sayNothing({ override, raises }: Graded, { say }: Source): string {
  if (override !== null) return say('byHandStays');
  if (raises.some(isGain)) return say('raisesWaitForPain');
  return raises.some(({ severity }) => severity === 'stop') ? say('stopFirst') : say('nothingRaises');
}

/** The largest gains of a grade that don't wait for pain in one line, or why there are none; an exercise is named where there are several. */
export function writeRaises(grade: Graded, of: RaiseSource, id: string, source: Source): Block[] {
  const { findings } = of;
  const { catalogue, sheet, say, held } = source;
  if (grade.state.kind === 'none') return [];
  const said = grade.raises
    .filter((raise) => isGain(raise) && !held.holdsRaise(raise, findings))
    .slice(0, mostRaises)
    .map((raise) => {
      const gain = sheet.format.exactPoints(raise.gain);
      const { what, exercises } = sayRaise(raise, of, catalogue, sheet);
      const remark = what.replace(/\.$/, '');
      return of.entries.length > 1 && raise.kind === 'group'
        ? say('raiseOf', { remark, exercise: sheet.format.list(exercises), gain })
        : say('raise', { remark, gain });
    });
  const line = said.length === 0 ? sayNothing(grade, source) : `${said.join('; ')}.`;
  return [{ kind: 'paragraph', id: `${id}-raises`, inlines: [strong(say('raiseLabel')), text(` ${line}`)] }];
}
