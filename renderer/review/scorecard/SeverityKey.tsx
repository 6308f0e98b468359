import { severities } from '../../../engine/rubric/rubric.ts';
import { Strokes } from '../../base/Strokes.tsx';
import { saySeverity } from '../../words/saySeverity.ts';

/** The marks in one line: strokes, word and what it means. */
export function SeverityKey() {
  return (
    <ul className="severity-key" aria-label={saySeverity('key')}>
      {severities.map((severity) => (
        <li key={severity}>
          <Strokes severity={severity} named="elsewhere" /> <strong>{saySeverity(severity)}</strong>{' '}
          {saySeverity(`${severity}Means`)}
        </li>
      ))}
    </ul>
  );
}
