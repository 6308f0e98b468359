/** So many of a list at most, spread evenly from its first to its last, in its order; those with the ids are among them. */
export function spreadOver<T extends { readonly clipId: string }>(
  clips: readonly T[],
  most: number,
  kept: readonly string[],
): readonly T[] {
  if (clips.length <= most) return clips;
  const wanted = new Set(clips.filter(({ clipId }) => kept.includes(clipId)));
  const others = clips.filter((one) => !wanted.has(one));
  const room = most - wanted.size;
  for (let at = 0; at < room; at += 1) {
    const one = others[Math.round((at * (others.length - 1)) / Math.max(1, room - 1))];
    if (one !== undefined) wanted.add(one);
  }
  return clips.filter((one) => wanted.has(one));
}
