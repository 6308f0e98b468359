type PointerListeners = {
  readonly onDown: (event: PointerEvent) => void;
  readonly onMove: (event: PointerEvent) => void;
  readonly onUp: (event: PointerEvent) => void;
  readonly onCancel: (event: PointerEvent) => void;
};

/** Listens to a pointer over an element; the returned function stops that. */
export function listenToPointer(
  element: HTMLElement | SVGElement,
  { onDown, onMove, onUp, onCancel }: PointerListeners,
): () => void {
  const listening = new AbortController();
  const { signal } = listening;
  const on = (
    name: 'pointerdown' | 'pointermove' | 'pointerup' | 'pointercancel',
    listener: (event: PointerEvent) => void,
  ) => element.addEventListener(name, (event) => event instanceof PointerEvent && listener(event), { signal });
  on('pointerdown', onDown);
  on('pointermove', onMove);
  on('pointerup', onUp);
  on('pointercancel', onCancel);
  return () => listening.abort();
}
