/** Takes the answer to the newest question alone: one that comes late is dropped. Nothing is taken once `stop` was called. */
export type NewestOnly<T> = { readonly ask: (asked: Promise<T>) => void; readonly stop: () => void };

export function newestOnly<T>(take: (answer: T) => void): NewestOnly<T> {
  let newest = 0;
  return {
    ask: (asked) => {
      newest += 1;
      const question = newest;
      void asked.then((answer) => {
        if (question === newest) take(answer);
      });
    },
    stop: () => {
      newest += 1;
    },
  };
}
