import type { Weight } from '../../engine/rubric/rubric.ts';

/** Slanted strokes like chalk tallies: how many, and whether one crosses them. */
const strokesOf: Readonly<Record<Exclude<Weight, 'keep'>, { readonly count: number; readonly crossed: boolean }>> = {
  prefer: { count: 1, crossed: false },
  adjust: { count: 2, crossed: false },
  correct: { count: 3, crossed: false },
  stop: { count: 4, crossed: true },
};

const gap = 5;

type Named = 'by its word' | 'elsewhere';

function SpokenWord({ word, named }: { readonly word: string; readonly named: Named }) {
  return named === 'by its word' ? <span className="visually-hidden">{word}</span> : null;
}

/** The mark of a weight. Its word is given to screen readers unless the word stands beside it anyway. */
export function Strokes({ weight, named = 'by its word' }: { readonly weight: Weight; readonly named?: Named }) {
  return (
    <>
      {weight === 'keep' ? (
        <svg className="strokes" viewBox="0 0 14 16" width="14" height="16" aria-hidden="true">
          <path d="M7 3.2v9.6M2.2 8h9.6" />
        </svg>
      ) : (
        <Tally {...strokesOf[weight]} />
      )}
      <SpokenWord word={weight} named={named} />
    </>
  );
}

function Tally({ count, crossed }: { readonly count: number; readonly crossed: boolean }) {
  const width = count * gap + (crossed ? 5 : 3);
  return (
    <svg className="strokes" viewBox={`0 0 ${width} 16`} width={width} height="16" aria-hidden="true">
      {Array.from({ length: count }, (_, index) => index * gap + (crossed ? 3.5 : 2.5)).map((x) => (
        <path key={x} d={`M${x + 1.2} 2 L${x} 14`} />
      ))}
      {crossed && <path d={`M1 12.2 L${width - 1} 3.8`} />}
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
      <SpokenWord word="fine" named={named} />
    </>
  );
}
