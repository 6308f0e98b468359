/** One act of a person: when it was done, and the clip that it judged, if it judged one. */
export type WorkAct = { readonly atMs: number; readonly clipId: string | null };

/** Without an act for so long, nobody was at work. */
export const longPauseMs = 5 * 60_000;

/** Fewer clips say nothing of a pace. */
const fewestClips = 3;

/** How many days before today are looked at, while today tells too little. */
export const lastDays = 14;

const dayMs = 86_400_000;

/** How long somebody was at work, by when they did something: the time between acts, without long pauses. */
export function workedMs(timesMs: readonly number[]): number {
  const inOrder = [...timesMs].sort((a, b) => a - b);
  return inOrder.reduce((sum, time, at) => {
    const gap = time - (inOrder[at - 1] ?? time);
    return gap <= longPauseMs ? sum + gap : sum;
  }, 0);
}

/** How long a clip takes, all that belongs to it included, and by which days. */
export type Pace = { readonly minutesPerClip: number; readonly by: 'today' | 'lastDays' };

function minutesPerClip(acts: readonly WorkAct[]): number | null {
  const clips = new Set(acts.flatMap(({ clipId }) => (clipId === null ? [] : [clipId])));
  const minutes = workedMs(acts.map(({ atMs }) => atMs)) / 60_000;
  return clips.size < fewestClips || minutes === 0 ? null : minutes / clips.size;
}

/**
 * The pace of today, or that of the last days while there is none of today yet; null where neither tells enough.
 *
 * @param acts what was done, in any order
 * @param dayStartMs when today began
 */
export function paceOf(acts: readonly WorkAct[], dayStartMs: number): Pace | null {
  const today = minutesPerClip(acts.filter(({ atMs }) => atMs >= dayStartMs));
  if (today !== null) return { minutesPerClip: today, by: 'today' };
  const firstMs = dayStartMs - lastDays * dayMs;
  const before = minutesPerClip(acts.filter(({ atMs }) => atMs >= firstMs && atMs < dayStartMs));
  return before === null ? null : { minutesPerClip: before, by: 'lastDays' };
}

/** The steps that a guess of minutes is told in: never as if it were known better. */
const steps = [
  { under: 30, by: 5 },
  { under: 90, by: 10 },
  { under: Number.POSITIVE_INFINITY, by: 30 },
] as const;

/** About how many minutes some clips take at a pace, rounded as a person would say it; 0 for no clips. */
export function minutesLeft({ minutesPerClip: each }: Pick<Pace, 'minutesPerClip'>, clips: number): number {
  if (clips === 0) return 0;
  const exact = each * clips;
  const { by } = steps.find(({ under }) => exact < under) ?? steps[2];
  return Math.max(by, Math.round(exact / by) * by);
}
