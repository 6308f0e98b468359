const pauseMs = 40;

/**
 * Looks again and again until there is something to see.
 *
 * @param what named in the failure
 * @param look gives null or false while it is not there yet
 */
export async function until<T>(
  what: string,
  look: () => Promise<T | null | false> | T | null | false,
  timeoutMs = 20_000,
): Promise<T> {
  const deadline = performance.now() + timeoutMs;
  for (;;) {
    const seen = await look();
    if (seen !== null && seen !== false) return seen;
    if (performance.now() > deadline) throw new Error(`Waited ${timeoutMs / 1000} s in vain for: ${what}`);
    await new Promise((resolve) => {
      setTimeout(resolve, pauseMs);
    });
  }
}
