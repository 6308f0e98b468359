import type { GradeState } from '../../engine/grading/grade.ts';

/** A letter, large; a dash while there is no grade. */
export function GradeMark({ state, testId }: { readonly state: GradeState; readonly testId: string }) {
  const letter = state.kind === 'none' ? '–' : state.mark;
  return (
    <span className="grade-mark" data-kind={state.kind} data-testid={testId}>
      {state.kind === 'none' ? <span aria-hidden="true">–</span> : letter}
      {state.kind === 'none' && <span className="visually-hidden">no grade yet</span>}
    </span>
  );
}
