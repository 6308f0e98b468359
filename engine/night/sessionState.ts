/** Where a session stands on its way from the first clip to the trainee. */
export const sessionStates = ['new', 'inWork', 'judged', 'sent', 'changedSince'] as const;
export type SessionState = (typeof sessionStates)[number];

/** What the state of a session follows from. */
export type StateFacts = {
  /** Whether somebody has flagged or ticked anything, or set a grade by hand. */
  readonly touched: boolean;
  /** `whole`: a grade that is not provisional. */
  readonly grade: 'none' | 'provisional' | 'whole';
  /** Whether its letter was sent or it was handed over, and whether it is still as it was then. */
  readonly sent: 'never' | 'asItIs' | 'changedSince';
};

/** The state of a session: what was sent says most, then its grade, then whether anybody has begun. */
export function sessionState({ touched, grade, sent }: StateFacts): SessionState {
  if (sent === 'asItIs') return 'sent';
  if (sent === 'changedSince') return 'changedSince';
  if (grade === 'whole') return 'judged';
  return touched || grade === 'provisional' ? 'inWork' : 'new';
}

/** What a person has to do next for a session. */
export type NightStep = 'import' | 'judge' | 'letter' | 'none';

type StepFacts = {
  readonly state: SessionState;
  readonly clips: number;
  /** '' without a grade. */
  readonly mark: string;
  readonly provisional: boolean;
};

/** The next step of a session on its way: clips first, then the judgement, then the letter, which leads to the handover. */
export function nextStep({ state, clips, mark, provisional }: StepFacts): NightStep {
  if (state === 'sent') return 'none';
  if (clips === 0) return 'import';
  if (state === 'judged' || (state === 'changedSince' && mark !== '' && !provisional)) return 'letter';
  return 'judge';
}

type LeftFacts = { readonly state: SessionState; readonly clips: number; readonly coverage: number };

/** About how many clips still have to be judged: the share that nobody has looked at, until the grade is whole. */
export function clipsLeft({ state, clips, coverage }: LeftFacts): number {
  if (state !== 'new' && state !== 'inWork') return 0;
  // Shares are sums of thirds and the like: what is whole but for the last digit is whole.
  return Math.max(0, Math.ceil(clips * (1 - coverage) - 1e-9));
}
