import { severities } from '../../../engine/rubric/rubric.ts';
import { Strokes } from '../../base/Strokes.tsx';
import { saySeverity } from '../../words/saySeverity.ts';

/** The marks in one line: strokes, word and what it means; a plain note last. */
export function SeverityKey() {
  return (
    <ul className="severity-key" aria-label={saySeverity('key')}>
      {[...severities, null].map((severity) => (
        <li key={severity}>
          <Strokes severity={severity} named="elsewhere" /> <strong>{saySeverity(severity ?? 'note')}</strong>{' '}
          {saySeverity(`${severity ?? 'note'}Means`)}
        </li>
      ))}
    </ul>
  );
}
