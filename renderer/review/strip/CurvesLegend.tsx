import { measuresState } from '../../state/clipState.ts';
import { sayStrip } from '../../words/sayStrip.ts';
import { useLayer } from '../state/viewState.ts';

/** Which line of the strip is what; beside the times, where it hides no line. */
export function CurvesLegend({ clipId }: { readonly clipId: string }) {
  const shown = useLayer('curves');
  const follows = measuresState((state) =>
    state.clipId === clipId ? state.measures?.measurement?.follows : undefined,
  );
  if (!shown || follows === undefined || follows === 'nothing') return null;
  return (
    <span className="curves-legend" aria-hidden="true">
      <span className="legend-height">{sayStrip('height')}</span>{' '}
      <span className="legend-speed">{sayStrip('speed')}</span>
    </span>
  );
}
