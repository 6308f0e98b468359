import type { Severity } from '../../engine/rubric/rubric.ts';
import { saySeverity } from '../words/saySeverity.ts';

/** Slanted strokes like chalk tallies: how many each severity has. */
const strokesOf: Readonly<Record<Exclude<Severity, 'keep' | 'stop'>, number>> = { prefer: 1, adjust: 2, correct: 3 };

const gap = 5;

type Named = 'by its word' | 'elsewhere';

function SpokenWord({ word, named }: { readonly word: string; readonly named: Named }) {
  return named === 'by its word' ? <span className="visually-hidden">{word}</span> : null;
}

/** The mark of a severity, or of a plain note (`severity` null). Its word is given to screen readers unless the word stands beside it anyway. */
export function Strokes({
  severity,
  named = 'by its word',
}: {
  readonly severity: Severity | null;
  readonly named?: Named;
}) {
  return (
    <>
      <Mark severity={severity} />
      <SpokenWord word={saySeverity(severity ?? 'note')} named={named} />
    </>
  );
}

function Mark({ severity }: { readonly severity: Severity | null }) {
  switch (severity) {
    case null:
      return (
        <svg className="strokes" viewBox="0 0 14 16" width="14" height="16" aria-hidden="true">
          <path d="M2 5h10M2 9h10M2 13h6" />
        </svg>
      );
    case 'keep':
      return (
        <svg className="strokes" viewBox="0 0 14 16" width="14" height="16" aria-hidden="true">
          <path d="M7 3.2v9.6M2.2 8h9.6" />
        </svg>
      );
    case 'stop':
      return (
        <svg className="strokes stop-plate" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
          <path d="M4.9 .5h6.2L15.5 4.9v6.2L11.1 15.5H4.9L.5 11.1V4.9ZM4 6.7v2.6h8V6.7Z" />
        </svg>
      );
    default:
      return <Tally count={strokesOf[severity]} />;
  }
}

function Tally({ count }: { readonly count: number }) {
  const width = count * gap + 3;
  return (
    <svg className="strokes" viewBox={`0 0 ${width} 16`} width={width} height="16" aria-hidden="true">
      {Array.from({ length: count }, (_, index) => index * gap + 2.5).map((x) => (
        <path key={x} d={`M${x + 1.2} 2 L${x} 14`} />
      ))}
    </svg>
  );
}

/** The tick of "looked at and fine". */
export function FineTick({ named = 'by its word' }: { readonly named?: Named }) {
  return (
    <>
      <svg className="strokes fine-tick" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
        <path d="M2.5 8.8 6.2 12.6 13.4 3.6" />
      </svg>
      <SpokenWord word={saySeverity('fine')} named={named} />
    </>
  );
}
