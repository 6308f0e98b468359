import type { Exercise, View } from '../../exercises/exercise.ts';
import type { Recording } from '../../recording/recording.ts';
import type { SetUp } from '../../recording/setUp.ts';
import type { FrameTable } from '../../time/frameTable.ts';
import type { ManualRep } from '../reps/setEdges.ts';

/** What a set is measured from. */
export type SetToMeasure = {
  readonly recording: Recording;
  readonly table: FrameTable;
  readonly shown: { readonly width: number; readonly height: number };
  /** Capture rate / playback rate. */
  readonly realTimeFactor: number;
  readonly exercise: Exercise;
  /** As the coach chose it; null = as the joints show it. */
  readonly view: View | null;
  readonly setUp: SetUp;
  /** Edges that a person set, in media seconds, one item a rep that has any. */
  readonly edges: readonly ManualRep[];
};
