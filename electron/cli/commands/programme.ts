import type { Command } from 'commander';
import { workOfEntries } from '../../../engine/document/sayWork.ts';
import { blocksText } from '../../../engine/document/toText.ts';
import { findExercise } from '../../../engine/exercises/catalogue.ts';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
import { programmeFindings } from '../../../engine/programme/findings.ts';
import { estimateOneRepMax, type OneRepMax } from '../../../engine/programme/oneRepMax.ts';
import { fractionalSets, volumeLoadKg } from '../../../engine/programme/week.ts';
import { loadIn } from '../../../engine/review/load.ts';
import { equipmentOf } from '../../../engine/review/parts.ts';
import type { Plan } from '../../../engine/review/plan.ts';
import type { Review } from '../../../engine/review/review.ts';
import { setLoad } from '../../../engine/review/work.ts';
import { exerciseName } from '../../../engine/sheet/flagRows.ts';
import { findingJson } from '../../../engine/sheet/gradeJson.ts';
import { sayEquipment } from '../../../engine/wording/sayEquipment.ts';
import { numbered, sayFindings } from '../../../engine/wording/sayGrade.ts';
import { cautionWording, sayerOf, sheetWording, workWording } from '../../../engine/wording/wordings.ts';
import { example } from '../options/example.ts';
import { shortNumber } from '../print/numbers.ts';
import { numberColumns, textColumns, textTable } from '../print/table.ts';
import type { Host } from '../run/host.ts';
import { readEdition } from '../sources/reviewFile.ts';

/**
 * The estimate from the heaviest planned set, in which the reps in reserve could have been done too. Null where the lifter's own
 * weight, which is not known, is part of the load.
 */
function estimateOf({ sets }: Plan, exercise: Exercise | undefined): OneRepMax | null {
  const heaviest = sets.reduce((most, set) => ((set.loadKg ?? 0) > (most.loadKg ?? 0) ? set : most));
  if (setLoad(heaviest.loadKg, exercise)?.kind !== 'held') return null;
  return estimateOneRepMax(heaviest.loadKg ?? 0, heaviest.reps + Math.round(heaviest.repsInReserve ?? 0));
}

/** An estimate as JSON has it, with the words that belong beside it. */
const noted = (estimate: OneRepMax | null) =>
  estimate && { ...estimate, note: sayerOf(workWording, 'en')('oneRepMaxNote') };

const closingLine = sayerOf(cautionWording, 'en')('closing');

/** What there is to train with, by which exercises are proposed; nothing where that is not stated. */
function trainsWith(review: Review): string[] {
  const equipment = equipmentOf(review);
  return equipment === null ? [] : [`Equipment: ${sayEquipment(equipment, 'en') ?? 'nothing'}\n`];
}

/** `programme SESSION.json`: what the plan could do better, sets per muscle, volume load, and the estimated load for one rep. */
export function addProgramme(program: Command, host: Host): void {
  program
    .command('programme')
    .description(
      'Checks the plan of a session and gives reasons: reps, effort, order, choice of exercises, sets per muscle, rest days.',
    )
    .argument('<session>', 'the review file (JSON)')
    .option('--earlier <files...>', "the trainee's earlier sessions, for weekly sets and rest days")
    .option('--json', 'print everything as JSON')
    .addHelpText('after', example('rackside programme today.json --earlier monday.json wednesday.json'))
    .action(async (file: string, options: { earlier?: string[]; json?: true }) => {
      const edition = await readEdition(host, file, options);
      const { review, catalogue, earlier } = edition;
      const findings = programmeFindings(review, catalogue, earlier);
      const { plan } = edition;
      const waits = (id: string): boolean => plan().pain !== null && !plan().findings.some((said) => said.id === id);
      const advised = findings.map((finding) => findingJson(finding, 'en'));
      const muscles = fractionalSets([review], catalogue);
      const planned = review.entries.filter(({ plan }) => plan !== undefined);
      const work = planned.flatMap(({ exercise, plan }) =>
        plan === undefined
          ? []
          : [
              {
                exercise,
                volumeLoadKg: volumeLoadKg(plan),
                oneRepMax: noted(estimateOf(plan, findExercise(catalogue, exercise))),
              },
            ],
      );
      if (options.json) {
        const equipment = equipmentOf(review);
        const { pain, stop, other } = plan().cautions;
        const cautions = [...pain, ...stop, ...other].map(({ id, topic, text }) => ({ id, topic, text }));
        const heed = { painNote: review.session.painNote, cautions, closing: closingLine };
        const told = advised.map((finding) => ({ ...finding, waitsForPain: waits(finding.id) }));
        host.print(`${JSON.stringify({ equipment, findings: told, fractionalSets: muscles, work, ...heed })}\n`);
        return;
      }
      const waitsForPain = sayerOf(sheetWording, 'en')('waitsForPain', { step: plan().pain?.step ?? 'none' });
      const advice = sayFindings(findings, 'en').map(({ what, why, suggestion, source, steps }, at) => {
        const asked = waits(findings[at]?.id ?? '') ? [waitsForPain] : [suggestion, ...numbered(steps)];
        return `- ${[what, why].join(' ').trim()} (${source})\n${asked.map((line) => `  ${line}\n`).join('')}`;
      });
      const notices = edition.notices();
      const { units } = review.trainee;
      const note = sayerOf(workWording, 'en')('oneRepMaxNote');
      const setsOf = workOfEntries(review, catalogue, 'en');
      const load = (kilograms: number): string => `${Math.round(loadIn(units, kilograms))} ${units}`;
      host.print(
        [
          ...(notices.top.length === 0 ? [] : [`${blocksText(notices.top)}\n`]),
          ...trainsWith(review),
          `Findings\n${advice.length > 0 ? advice.join('') : 'None.\n'}`,
          textTable(
            [
              ...textColumns('Exercise'),
              ...numberColumns('Volume load', 'Estimated one-rep max'),
              ...textColumns('Sets'),
            ],
            work.map(({ exercise, volumeLoadKg: volume, oneRepMax }, index) => [
              exerciseName(catalogue, exercise),
              volume === null || volume === 0 ? '–' : load(volume),
              oneRepMax === null ? '–' : `${load(oneRepMax.lowKg)} to ${load(oneRepMax.highKg)}`,
              setsOf(planned[index]?.id ?? ''),
            ]),
          ),
          ...(work.some(({ oneRepMax }) => oneRepMax !== null) ? [`The one-rep max is ${note}.\n`] : []),
          textTable(
            [...textColumns('Muscle'), ...numberColumns('Hard sets (indirect ones count half)')],
            muscles.map(({ muscle, sets }) => [muscle, shortNumber(sets, 1)]),
          ),
          `${blocksText([...notices.cautions, notices.closing])}\n`,
        ].join('\n'),
      );
    });
}
