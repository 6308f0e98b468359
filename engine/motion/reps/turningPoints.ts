/** An extreme of a curve: its sample and how high it is. */
export type Turn = { readonly index: number; readonly value: number };

/** Extremes that alternate, each at least `leastRange` from the one before; none where the values cover less than that. */
export function turningPoints(values: readonly number[], leastRange: number): Turn[] {
  const turns: Turn[] = [];
  let high: Turn | null = null;
  let low: Turn | null = null;
  let heading: 'up' | 'down' | null = null;
  values.forEach((value, index) => {
    const here = { index, value };
    if (!high || value > high.value) high = here;
    if (!low || value < low.value) low = here;
    if (heading !== 'down' && high.value - value >= leastRange) {
      turns.push(high);
      heading = 'down';
      low = here;
    } else if (heading !== 'up' && value - low.value >= leastRange) {
      turns.push(low);
      heading = 'up';
      high = here;
    }
    if (heading === 'down' && value <= low.value) high = here;
    if (heading === 'up' && value >= high.value) low = here;
  });
  const last: Turn | null = heading === 'down' ? low : heading === 'up' ? high : null;
  return last ? [...turns, last] : turns;
}
