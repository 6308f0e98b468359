import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import type { CriterionScore, EntryGrade } from '../../../engine/grading/grade.ts';
import { repTotals } from '../../../engine/grading/repTotals.ts';
import type { Language } from '../../../engine/language/language.ts';
import { leadOf } from '../../../engine/review/camerasOfSet.ts';
import type { Clip, Entry, Flag } from '../../../engine/review/review.ts';
import type { CriterionId } from '../../../engine/rubric/rubric.ts';
import { criterionName } from '../../../engine/sheet/flagRows.ts';
import type { Column } from '../../state/cursorState.ts';
import { deskLanguage } from '../../words/deskLanguage.ts';
import { sayScorecard } from '../../words/sayScorecard.ts';
import { clipsOnCard, columnsOfClip, remarksOfSet } from './columns.ts';

export type Cell = {
  readonly criterion: CriterionId;
  readonly column: Column;
  /** Flags of the column itself, as the review has them. */
  readonly flags: readonly Flag[];
  /** Flags on the whole set that weigh on this rep too. */
  readonly fromSet: readonly Flag[];
  readonly ticked: boolean;
  readonly tickedBySet: boolean;
  /** The view of its clip can show it. */
  readonly shown: boolean;
  /** 0-100, what the rep earns here; null where there is no judgement, or the column is no unit of it. */
  readonly score: number | null;
};

export type Row = {
  readonly criterion: CriterionId;
  /** As it is called on this exercise: "Load path" where there is no bar. */
  readonly name: string;
  /** Share of the exercise score, 0-1. */
  readonly share: number;
  /** A view can judge it, or somebody has judged it. */
  readonly applicable: boolean;
  readonly lookedAt: boolean;
  readonly score: number | null;
  readonly cells: readonly Cell[];
};

export type ColumnHead = {
  readonly column: Column;
  readonly label: string;
  /** 0-100: the rep's criteria by their shares. Their mean over the reps is the weighted mean. */
  readonly total: number | null;
};

export type ScorecardModel = {
  readonly clips: readonly Clip[];
  readonly columns: readonly ColumnHead[];
  readonly rows: readonly Row[];
  readonly weightedMean: number | null;
};

const isUnit = (unit: { readonly clip: string; readonly rep: number | null }, lead: Clip, { rep }: Column): boolean =>
  unit.clip === lead.id && unit.rep === (rep === 'set' ? null : rep);

/** Flags and ticks of one criterion, sorted once: a card of hundreds of cells must not search them all for each cell. */
type OfCriterion = Pick<Entry, 'clips' | 'ticks'> & { readonly flags: readonly Flag[] };

function cellOf(entry: OfCriterion, clip: Clip, scored: CriterionScore, column: Column): Cell {
  const spot = { criterion: scored.criterion, column };
  const setSpot = { ...spot, column: { clipId: column.clipId, rep: 'set' } as const };
  const isRep = column.rep !== 'set';
  const lead = leadOf(entry.clips, clip);
  return {
    ...spot,
    flags: remarksOfSet(entry.flags, spot, entry.clips),
    fromSet: isRep ? remarksOfSet(entry.flags, setSpot, entry.clips) : [],
    ticked: remarksOfSet(entry.ticks, spot, entry.clips).length > 0,
    shown: scored.shownBy.includes(lead.id),
    tickedBySet: isRep && remarksOfSet(entry.ticks, setSpot, entry.clips).length > 0,
    score: scored.lookedAt ? (scored.reps.find((unit) => isUnit(unit, lead, column))?.score ?? null) : null,
  };
}

type Made = {
  readonly onStage: string | null;
  readonly catalogue: Catalogue;
  readonly language: Language;
  readonly model: ScorecardModel;
};

const made = new WeakMap<EntryGrade, Made>();

/**
 * What the scorecard of one exercise shows: the review's marks and the grade's own numbers, side by side. A grade is of
 * one entry as it was read, so its model is made once in a language, whoever asks. A set that several cameras filmed has the columns of
 * the clip on the stage.
 */
export function scorecardModel(
  entry: Entry,
  grade: EntryGrade,
  catalogue: Catalogue,
  onStage: string | null = null,
): ScorecardModel {
  const { language } = deskLanguage.getState();
  const known = made.get(grade);
  if (known?.catalogue === catalogue && known.language === language && known.onStage === onStage) return known.model;
  const model = makeModel(entry, grade, catalogue, onStage);
  made.set(grade, { onStage, catalogue, language, model });
  return model;
}

function makeModel(entry: Entry, grade: EntryGrade, catalogue: Catalogue, onStage: string | null): ScorecardModel {
  const clips = clipsOnCard(entry.clips, onStage);
  const columns = clips.flatMap((clip) => columnsOfClip(clip).map((column) => ({ clip, column })));
  const totals = repTotals(entry, grade);
  const flags = Map.groupBy(entry.flags, (flag) => flag.criterion);
  const ticks = Map.groupBy(entry.ticks, (tick) => tick.criterion);
  return {
    clips,
    columns: columns.map(({ clip, column }) => ({
      column,
      label: column.rep === 'set' ? sayScorecard('set') : String(column.rep),
      total: totals.find((unit) => isUnit(unit, leadOf(entry.clips, clip), column))?.total ?? null,
    })),
    rows: grade.criteria.map((scored) => ({
      criterion: scored.criterion,
      name: criterionName(catalogue, scored.criterion, entry.exercise),
      share: scored.share,
      applicable: scored.applicable,
      lookedAt: scored.lookedAt,
      score: scored.score,
      cells: columns.map(({ clip, column }) =>
        cellOf(
          { clips: entry.clips, flags: flags.get(scored.criterion) ?? [], ticks: ticks.get(scored.criterion) ?? [] },
          clip,
          scored,
          column,
        ),
      ),
    })),
    weightedMean: grade.weightedMean,
  };
}
