/**
 * Makes a refresh of a read: while one is under way no other begins, but what was asked for meanwhile is read once more
 * after it. The promise ends when nothing newer is left to read, and fails as the read failed; the next refresh reads again.
 */
export function oneReadAtATime(readOnce: () => Promise<void>): () => Promise<void> {
  let reading: Promise<void> | null = null;
  let again = false;
  const readUntilNewest = async (): Promise<void> => {
    try {
      do {
        again = false;
        await readOnce();
      } while (again);
    } finally {
      reading = null;
    }
  };
  return () => {
    if (reading !== null) again = true;
    else reading = readUntilNewest();
    return reading;
  };
}
