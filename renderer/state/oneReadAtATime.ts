/**
 * Makes a refresh of a read: one read at a time. A refresh that is asked for while one is under way waits for the next, which begins
 * once that has ended, however it ended, and serves all that asked meanwhile. The promise ends as the read ends that began after the asking.
 */
export function oneReadAtATime(readOnce: () => Promise<void>): () => Promise<void> {
  let reading: Promise<void> | null = null;
  let next: Promise<void> | null = null;
  // A read that throws at once fails like one that fails later.
  const startReading = async (): Promise<void> => readOnce();
  const begin = (): Promise<void> => {
    next = null;
    const mine = startReading();
    reading = mine;
    const end = (): void => {
      if (reading === mine) reading = null;
    };
    mine.then(end, end);
    return mine;
  };
  return () => {
    if (next !== null) return next;
    if (reading === null) return begin();
    next = reading.then(begin, begin);
    return next;
  };
}
