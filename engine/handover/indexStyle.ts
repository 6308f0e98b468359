import { colourVariables } from '../document/paperColours.ts';

/** The look of the page, on screens of any width, and on paper. */
export const indexStyle = `:root { ${colourVariables('light')} color-scheme: light dark; }
@media (prefers-color-scheme: dark) { :root { ${colourVariables('dark')} } }
* { box-sizing: border-box; }
html { background: var(--paper); color: var(--ink); -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
body { margin: 0; font: 1rem/1.5 "Atkinson Hyperlegible Next", "Atkinson Hyperlegible", Verdana, "DejaVu Sans", sans-serif; overflow-wrap: anywhere; }
header, nav, main, footer { max-width: 76rem; margin: 0 auto; padding: 0 1.25rem; }
header { padding-top: 2rem; }
h1 { margin: 0 0 .5rem; padding-bottom: .75rem; font-size: 1.75rem; line-height: 1.25; border-bottom: .25rem solid var(--chalk); }
h2 { margin: 1.5rem 0 .375rem; font-size: 1.25rem; line-height: 1.3; color: var(--chalk); }
h3 { margin: 1rem 0 .375rem; font-size: 1rem; }
h1, h2, h3 { text-wrap: balance; }
p { margin: .5rem 0; }
a { color: var(--chalk); text-underline-offset: .15em; }
nav ul, details ul { margin: .25rem 0; padding: 0; list-style: none; display: flex; flex-wrap: wrap; gap: .25rem 1.5rem; }
nav a, details a { display: inline-block; padding: .5rem 0; }
main nav { padding: 0; }
main nav ul { gap: 0 1.25rem; }
main nav .soft { white-space: nowrap; }
.documents { flex-direction: column; }
.documents li { display: flex; flex-wrap: wrap; align-items: center; gap: .25rem .75rem; }
.documents .what { flex: 0 1 14rem; }
.documents a { min-height: 2.75rem; padding: .5rem .875rem; border: 1px solid var(--edge); border-radius: .25rem; background: var(--card); text-decoration: none; }
.mark { margin: 1rem 0 0; display: flex; align-items: baseline; gap: .75rem; }
.mark strong { font-size: 3rem; line-height: 1; }
.personal { max-width: 40rem; font-size: 1.125rem; }
.heard { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
nav li { position: relative; }
summary { padding: .375rem 0; color: var(--soft); cursor: pointer; }
.soft, footer { color: var(--soft); }
footer { padding-top: 2rem; padding-bottom: 3rem; }
.notice { margin: 1.5rem 0; padding: .25rem 1rem .5rem; border: 1px solid var(--ink); border-left-width: .5rem; }
.notice h2 { margin: .5rem 0 .25rem; font-size: 1.0625rem; color: var(--ink); }
:focus-visible { outline: .1875rem solid var(--chalk); outline-offset: .125rem; }
.desk { display: grid; grid-template-columns: minmax(0, 3fr) minmax(18rem, 2fr); grid-template-areas: "stage notes" "tools notes" "rest notes"; grid-template-rows: auto auto 1fr; column-gap: 1.5rem; align-items: start; }
.stage { grid-area: stage; }
.tools { grid-area: tools; }
.notes { grid-area: notes; }
.picture { position: relative; margin: 0 auto; background: #171512; line-height: 0; }
.picture video { display: block; width: 100%; height: auto; }
.overlay { position: absolute; inset: 0; width: 100%; height: 100%; pointer-events: none; overflow: hidden; }
.overlay path { fill: none; stroke-linejoin: round; stroke-linecap: round; }
.overlay .casing { stroke: #171512; stroke-opacity: .75; }
.overlay .load-path .whole:not(.casing) { stroke: #8fdcff; stroke-opacity: .55; }
.overlay .load-path .done { stroke: #8fdcff; }
.overlay .load-path .now { fill: #8fdcff; stroke: #171512; }
.overlay .body path:not(.casing) { stroke: #efe8da; }
.overlay .body circle { fill: #efe8da; stroke: #171512; }
.overlay text { fill: #efe8da; stroke: #171512; paint-order: stroke; font-weight: 700; dominant-baseline: central; font-family: inherit; }
.readout { margin: .375rem 0; color: var(--soft); font-variant-numeric: tabular-nums; font-size: .9375rem; min-height: 1.5em; }
.controls { display: grid; grid-template-columns: minmax(0, 1fr) minmax(6rem, auto) minmax(0, 1fr); gap: .5rem; margin-top: .375rem; }
.controls button { min-height: 3.25rem; padding: .25rem .5rem; }
.position { grid-column: 1 / -1; width: 100%; min-height: 1.75rem; margin: 0; accent-color: var(--chalk); }
.controls .play:nth-child(2) { grid-column: 1 / -1; }
.picture:fullscreen { display: flex; align-items: center; max-width: none; }
.picture:fullscreen video { height: 100%; object-fit: contain; }
.tools, .reps ol { display: flex; flex-wrap: wrap; gap: .5rem; align-items: center; }
.tools fieldset { display: flex; flex-wrap: wrap; gap: .25rem 1rem; margin: 0; padding: 0; border: 0; }
.tools legend { float: left; margin-right: 1rem; padding: 0; line-height: 2.75rem; color: var(--soft); }
.tools label { display: inline-flex; align-items: center; gap: .375rem; min-height: 2.75rem; }
.reps { flex-basis: 100%; }
.reps ol, .notes ol { margin: 0; padding: 0; list-style: none; }
button, select { font: inherit; color: var(--ink); background: var(--card); border: 1px solid var(--edge); border-radius: .25rem; min-height: 2.75rem; padding: .375rem .75rem; }
button { cursor: pointer; }
button:hover { border-color: var(--chalk); }
input[type="checkbox"] { flex: none; margin: 0; width: 1.25rem; height: 1.25rem; accent-color: var(--chalk); }
.notes h3 { margin-top: 0; }
.notes ol { max-height: 85vh; overflow-y: auto; padding: .25rem; margin: -.25rem; scrollbar-color: var(--edge) transparent; scrollbar-width: thin; }
.keys label { display: inline-flex; align-items: center; gap: .5rem; min-height: 2.75rem; }
.notes li { padding-bottom: .75rem; }
.notes li > p { margin: .25rem 0 0; padding-left: .9375rem; }
.note { display: block; width: 100%; text-align: left; border-left-width: .25rem; }
.note[aria-current] { border-color: var(--chalk); background: var(--chalk); color: var(--paper); }
.note time { font-variant-numeric: tabular-nums; font-weight: 700; margin-right: .5rem; }
.marks { margin: 0 0 .5rem; font-size: .875rem; }
.strokes { white-space: nowrap; }
.stop > .note { border-left: .5rem solid var(--ink); }
.cue { font-style: italic; }
html:not(.ready) :is(.controls, .tools, .readout, .keys) { display: none; }
html:not(.ready) .note { pointer-events: none; }
@media (hover: none) and (pointer: coarse) { .keys, .key { display: none; } }
@media (max-width: 52rem) {
  header, nav, main, footer { padding-left: 1rem; padding-right: 1rem; }
  header { padding-top: 1rem; }
  h1 { font-size: 1.375rem; }
  .notice { margin: 1rem 0; }
  main nav a { padding: .375rem 0; }
  summary { padding: .625rem 0; }
  .key { display: none; }
  .tools legend { float: none; width: 100%; margin: 0; line-height: inherit; }
  .reps ol { display: grid; grid-template-columns: repeat(auto-fill, minmax(10rem, 1fr)); }
  .rep { width: 100%; height: 100%; padding: .25rem; font-size: .9375rem; }
  .desk { display: block; }
  .stage { background: var(--paper); }
  .notes h3 { margin-top: 1rem; }
  .notes ol { max-height: none; overflow: visible; }
}
@media (max-width: 52rem) and (min-height: 36rem) {
  .stage { position: sticky; top: 0; z-index: 1; padding-bottom: .25rem; }
  .note { scroll-margin-top: calc(40vh + 9.5rem); }
}
@media (prefers-reduced-motion: no-preference) { html { scroll-behavior: smooth; } }
@media print {
  html { background: none; }
  .tools, .readout, .keys, .stage, details { display: none; }
  .desk { display: block; }
  .notes ol { max-height: none; overflow: visible; }
  .notes li, section > h2 { break-inside: avoid; }
  h2, h3 { break-after: avoid; }
}
`;

/** How high a clip's picture may be at most, in shares of the screen's height. */
const mostHeight = { wide: 72, narrow: 40 } as const;

/** Size of the words over the picture on a narrow screen, of a picture 360 wide. */
const narrowWords = 13;

/** The rules of one clip, so that its picture never takes the whole screen. */
export function clipStyle(id: string, { width, height }: { readonly width: number; readonly height: number }): string {
  const rule = (share: number) => `#${id} .picture { max-width: calc(${share}vh * ${width} / ${height}); }`;
  const size = Math.round((narrowWords * Math.max(width, height / 1.5)) / 360);
  const words = `#${id} .overlay text { font-size: ${size}px; }`;
  return `${rule(mostHeight.wide)}\n@media (max-width: 52rem) { ${rule(mostHeight.narrow)} ${words} }\n`;
}
