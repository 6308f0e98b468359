/**
 * Makes a refresh of a read: while one is under way no other begins, but what was asked for meanwhile is read once more
 * after it. The promise ends when nothing newer is left to read.
 */
export function oneReadAtATime(readOnce: () => Promise<void>): () => Promise<void> {
  let reading: Promise<void> | null = null;
  let again = false;
  return async () => {
    if (reading !== null) {
      again = true;
      return reading;
    }
    reading = (async () => {
      do {
        again = false;
        await readOnce();
      } while (again);
    })();
    await reading;
    reading = null;
  };
}
