/** Puts the focus back on the cell the cursor is on, once the page has been drawn again. */
export const focusCursorCell = (): void => {
  requestAnimationFrame(() => document.querySelector<HTMLElement>('.scorecard [data-cursor=true]')?.focus());
};
