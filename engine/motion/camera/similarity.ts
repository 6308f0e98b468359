/** A shift, a turn and a change of scale: x' = a x − b y + shiftX, y' = b x + a y + shiftY. */
export type Similarity = {
  readonly a: number;
  readonly b: number;
  readonly shiftXPx: number;
  readonly shiftYPx: number;
};

export const unmoved: Similarity = { a: 1, b: 0, shiftXPx: 0, shiftYPx: 0 };

export type Pair = {
  readonly from: { readonly xPx: number; readonly yPx: number };
  readonly to: { readonly xPx: number; readonly yPx: number };
};

/** Where a similarity takes a point. */
export function moved({ a, b, shiftXPx, shiftYPx }: Similarity, at: Pair['from']): { xPx: number; yPx: number } {
  return { xPx: a * at.xPx - b * at.yPx + shiftXPx, yPx: b * at.xPx + a * at.yPx + shiftYPx };
}

/** One similarity after another. */
export function after(second: Similarity, first: Similarity): Similarity {
  const shift = moved(second, { xPx: first.shiftXPx, yPx: first.shiftYPx });
  return {
    a: second.a * first.a - second.b * first.b,
    b: second.a * first.b + second.b * first.a,
    shiftXPx: shift.xPx,
    shiftYPx: shift.yPx,
  };
}

/** The same in a picture so many times larger. */
export const enlarged = ({ a, b, shiftXPx, shiftYPx }: Similarity, factor: number): Similarity => ({
  a,
  b,
  shiftXPx: shiftXPx * factor,
  shiftYPx: shiftYPx * factor,
});

/** The similarity that undoes another. */
export function inverseOf({ a, b, shiftXPx, shiftYPx }: Similarity): Similarity {
  const size = a * a + b * b;
  const back = { a: a / size, b: -b / size };
  return {
    ...back,
    shiftXPx: -(back.a * shiftXPx - back.b * shiftYPx),
    shiftYPx: -(back.b * shiftXPx + back.a * shiftYPx),
  };
}

/**
 * The similarity that takes pairs of points onto each other, least squares that let go of outliers (Tukey's biweight):
 * points on whoever moves in front of the background. Null when fewer than eight pairs, or less than a third, agree to
 * within a pixel. `near`: what it is like, in turn and scale.
 */
export function fitSimilarity(
  pairs: readonly Pair[],
  near: Similarity,
): { readonly similarity: Similarity; readonly agreeing: number } | null {
  if (pairs.length < 8) return null;
  let reachPx = 4;
  let similarity = shiftedOn(near, pairs);
  for (let round = 0; round < 10; round += 1) {
    const misses = pairs.map((pair) => missOf(similarity, pair));
    const weights = misses.map((miss) => (miss >= reachPx ? 0 : (1 - (miss / reachPx) ** 2) ** 2));
    const solved = weighted(pairs, weights);
    if (!solved) return null;
    similarity = solved;
    reachPx = Math.max(0.6, reachPx * 0.7);
  }
  const agreeing = pairs.filter((pair) => missOf(similarity, pair) < 1).length;
  return agreeing >= 8 && agreeing >= pairs.length / 3 ? { similarity, agreeing } : null;
}

function missOf(similarity: Similarity, { from, to }: Pair): number {
  const at = moved(similarity, from);
  return Math.hypot(at.xPx - to.xPx, at.yPx - to.yPx);
}

/** A similarity with the median of what it leaves along each axis added: a start that outliers can't pull. */
function shiftedOn(near: Similarity, pairs: readonly Pair[]): Similarity {
  const middle = (numbers: number[]) => numbers.sort((one, other) => one - other)[numbers.length >> 1] ?? 0;
  return {
    ...near,
    shiftXPx: near.shiftXPx + middle(pairs.map(({ from, to }) => to.xPx - moved(near, from).xPx)),
    shiftYPx: near.shiftYPx + middle(pairs.map(({ from, to }) => to.yPx - moved(near, from).yPx)),
  };
}

function weighted(pairs: readonly Pair[], weights: readonly number[]): Similarity | null {
  let sum = 0;
  const mean = { fromX: 0, fromY: 0, toX: 0, toY: 0 };
  pairs.forEach(({ from, to }, index) => {
    const weight = weights[index] ?? 0;
    sum += weight;
    mean.fromX += weight * from.xPx;
    mean.fromY += weight * from.yPx;
    mean.toX += weight * to.xPx;
    mean.toY += weight * to.yPx;
  });
  if (sum < 2) return null;
  const fromX = mean.fromX / sum;
  const fromY = mean.fromY / sum;
  let along = 0;
  let across = 0;
  let size = 0;
  pairs.forEach(({ from, to }, index) => {
    const weight = weights[index] ?? 0;
    const x = from.xPx - fromX;
    const y = from.yPx - fromY;
    const toX = to.xPx - mean.toX / sum;
    const toY = to.yPx - mean.toY / sum;
    along += weight * (x * toX + y * toY);
    across += weight * (x * toY - y * toX);
    size += weight * (x * x + y * y);
  });
  if (size < 1) return null;
  const a = along / size;
  const b = across / size;
  return {
    a,
    b,
    shiftXPx: mean.toX / sum - (a * fromX - b * fromY),
    shiftYPx: mean.toY / sum - (b * fromX + a * fromY),
  };
}
