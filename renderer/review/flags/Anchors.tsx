import { type Criterion, weights } from '../../../engine/rubric/rubric.ts';
import { capitalized } from '../../base/capitalized.ts';
import { Strokes } from '../../base/Strokes.tsx';

/** What each weight looks like on film, so that two coaches mark alike. */
export function Anchors({ criterion }: { readonly criterion: Criterion }) {
  return (
    <div className="anchors">
      <p>{criterion.question}</p>
      <dl>
        {weights.map((weight) => (
          <div key={weight}>
            <dt>
              <Strokes weight={weight} named="elsewhere" /> {capitalized(weight)}
            </dt>
            <dd>{criterion.anchors[weight]}</dd>
          </div>
        ))}
      </dl>
    </div>
  );
}
