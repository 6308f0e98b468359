/** Lets go of the focus, so that the keys are the scorecard's again. */
export function keysBackOnCard(): void {
  const active = document.activeElement;
  if (active instanceof HTMLElement || active instanceof SVGElement) active.blur();
}
