/** How long a look took from its order to its answer, and how long a thread worked on it. */
export type LookTime = { readonly tookMs: number; readonly workedMs: number };

/** A thread that gets less than this share of the time it could use hardly gets on. */
const leastShare = 0.1;
/** So much time is looked back over, so that a short rush is no reason. */
const judgedOverMs = 10_000;

/** Judges, look by look, whether threads that give way to everybody else wait too long. */
export function openPatience(): { readonly isOver: (look: LookTime) => boolean } {
  const times: LookTime[] = [];
  let tookMs = 0;
  let workedMs = 0;
  return {
    isOver: (look) => {
      times.push(look);
      tookMs += look.tookMs;
      workedMs += look.workedMs;
      for (let first = times[0]; first && tookMs - first.tookMs >= judgedOverMs; first = times[0]) {
        tookMs -= first.tookMs;
        workedMs -= first.workedMs;
        times.shift();
      }
      return tookMs >= judgedOverMs && workedMs < leastShare * tookMs;
    },
  };
}
