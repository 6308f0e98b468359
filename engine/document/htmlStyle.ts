import { colourVariables } from './paperColours.ts';

/**
 * Rows of the tables in a class as cards, each with its labels, where they would have to be scrolled sideways. What is short
 * shares a line.
 */
const cards = (of: string): string => `
  ${of} { overflow: visible; }
  ${of} table, ${of} caption, ${of} tbody, ${of} th { display: block; }
  ${of} thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
  ${of} caption { padding-bottom: .5rem; }
  ${of} tbody tr { display: flex; flex-wrap: wrap; column-gap: 1.25rem; margin: 0 0 .625rem; padding: .5rem .75rem; border: 1px solid var(--rule); border-radius: .25rem; background: var(--card); }
  ${of} tbody th, ${of} td { padding: .125rem 0; border: 0; text-align: start; overflow-wrap: anywhere; }
  ${of} tbody th { flex: 1 0 100%; font-size: 1rem; }
  ${of} tbody th[data-label]::before { content: attr(data-label) " "; }
  ${of} td { display: flex; column-gap: .5rem; }
  ${of} td::before { flex: none; content: attr(data-label); color: var(--soft); }
  ${of} td.prose { display: block; flex: 1 0 100%; }
  ${of} td.prose::before { margin-inline-end: .5rem; }
  ${of} td > span { min-width: 0; }
  ${of} th.long, ${of} td.long { min-width: 0; }
  ${of} tbody th:empty, ${of} td:empty { display: none; }
  ${of} .bars { flex: 1 0 100%; width: auto; align-items: center; }
  ${of} .bar { flex: 1; margin: 0; }
  ${of} .bars > span { width: auto; min-width: 2.75rem; text-align: end; }
`;

/** The look of a document on screen and on paper: ink on warm paper, one chalk accent; at night on a dark board. */
export const htmlStyle = `:root { ${colourVariables('light')} color-scheme: light; }
@media screen { :root[data-scheme="dark"] { ${colourVariables('dark')} color-scheme: dark; } }
@media screen and (prefers-color-scheme: dark) { :root:not([data-scheme]) { ${colourVariables('dark')} color-scheme: dark; } }
html { background: var(--paper); color: var(--ink); -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
body {
  margin: 0;
  font: 1.0625rem/1.55 "Atkinson Hyperlegible Next", "Atkinson Hyperlegible", Verdana, "DejaVu Sans", sans-serif;
}
main { max-width: 44rem; margin: 0 auto; padding: 2.5rem 1.25rem 4rem; overflow-wrap: anywhere; }
h1 { margin: 0 0 1.5rem; font-size: 1.75rem; line-height: 1.25; padding-bottom: .75rem; border-bottom: .25rem solid var(--chalk); }
h2 { margin: 2.25rem 0 .5rem; font-size: 1.25rem; line-height: 1.3; color: var(--chalk); }
h3 { margin: 1.5rem 0 .25rem; font-size: 1.0625rem; line-height: 1.35; }
h1, h2, h3 { text-wrap: balance; }
p { margin: .5rem 0; }
ul, ol { margin: .5rem 0; padding-left: 1.5rem; }
li { margin: .25rem 0; }
li[dir] { list-style-position: inside; }
time { font-family: "Atkinson Hyperlegible Mono", "DejaVu Sans Mono", monospace; font-size: .9em; white-space: nowrap; }
th time { font: inherit; }
.table { overflow-x: auto; margin: 1rem 0; }
.table:focus-visible { outline: .1875rem solid var(--chalk); outline-offset: .25rem; }
table { width: 100%; border-collapse: collapse; overflow-wrap: normal; font-size: .9375rem; line-height: 1.4; font-variant-numeric: tabular-nums; }
caption { text-align: start; color: var(--soft); padding-bottom: .375rem; }
th, td { padding: .375rem .5rem; text-align: start; vertical-align: top; border-bottom: 1px solid var(--rule); }
thead th { border-bottom: 2px solid var(--ink); font-weight: 600; }
tbody th { font-weight: 600; }
th.end, td.end { text-align: right; }
th.long, td.long { overflow-wrap: anywhere; min-width: 8rem; }
.notice { margin: 1.5rem 0; padding: .25rem 1rem .5rem; border: 1px solid var(--ink); border-left-width: .5rem; }
.notice h2 { margin: .5rem 0 .25rem; font-size: 1.0625rem; color: var(--ink); }
.bars { white-space: nowrap; width: 60%; }
.bars > span { display: inline-block; vertical-align: middle; white-space: normal; width: 5.5rem; }
.bar { display: inline-block; vertical-align: middle; width: calc(100% - 6rem); min-width: 3rem; height: .625rem; margin-right: .5rem; }
.bar .track { fill: var(--rule); }
.bar .fill { fill: var(--chalk); }
.bar .unknown { fill: none; stroke: var(--soft); stroke-width: 1; stroke-dasharray: 3 3; vector-effect: non-scaling-stroke; }
.dense table { font-size: .875rem; line-height: 1.3; }
.dense h2:not(.notice > h2) { margin-top: 1.5rem; }
.dense th, .dense td { padding-top: .125rem; padding-bottom: .125rem; }
figure { margin: 0; }
img { display: block; width: auto; max-width: 100%; height: auto; max-height: 30rem; border: 1px solid var(--rule); box-sizing: border-box; }
figcaption { margin-top: .25rem; color: var(--soft); font-size: .875rem; line-height: 1.35; }
.pictures { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(13rem, 100%), 1fr)); gap: 1rem; margin: 1rem 0; align-items: start; }
.beside { display: grid; grid-template-columns: minmax(0, 1fr) minmax(0, 42%); column-gap: 1.5rem; align-items: start; margin: .5rem 0; }
.beside > figure { grid-column: 2; grid-row: 1; padding-top: .375rem; }
.beside > .words { grid-column: 1; grid-row: 1; }
.beside > .words > :first-child { margin-top: 0; }
@media screen and (max-width: 40rem) {
  main { padding: 1.5rem 1rem 3rem; }
  h1 { font-size: 1.5rem; margin-bottom: 1rem; }
  .beside { display: block; }
  .beside > figure { margin-bottom: .75rem; }
  .pictures { grid-template-columns: repeat(2, minmax(0, 1fr)); gap: .75rem; }
${cards('.table')}}
@media screen and (max-width: 52rem) {${cards('.wide')}}
@page { margin: 18mm 20mm; }
@media print {
  html { background: none; }
  main { max-width: none; margin: 0; padding: 0; }
  body { font-size: 10.5pt; }
  h1 { font-size: 18pt; }
  h2 { font-size: 13pt; }
  h3 { font-size: 10.5pt; }
  table { font-size: 9pt; }
  figcaption { font-size: 8.5pt; }
  h1, h2, h3, caption, .leads { break-after: avoid; break-inside: avoid; }
  p, li { orphans: 2; widows: 2; }
  tr, li, figure, .notice, .beside { break-inside: avoid; }
  .dense { font-size: 8.5pt; line-height: 1.3; }
  .dense p { margin: .25rem 0; }
  .dense .table, .dense table { break-inside: avoid; }
  .dense th, .dense td { padding-top: .0625rem; padding-bottom: .0625rem; }
  .dense h1 { margin-bottom: .5rem; font-size: 16pt; }
  .dense h2 { font-size: 11pt; }
  .dense h2:not(.notice > h2) { margin-top: .75rem; }
  .dense table { font-size: 8pt; line-height: 1.2; }
  .dense .table { margin: .25rem 0; }
  img { max-height: 11cm; }
  .pictures { grid-template-columns: repeat(auto-fill, minmax(5cm, 1fr)); }
  .table { overflow: visible; }
  thead { display: table-header-group; }
}
`;
