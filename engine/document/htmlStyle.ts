/** The look of a document on screen and on paper: ink on warm paper, one chalk accent. */
export const htmlStyle = `:root {
  --paper: #fbf7ee;
  --ink: #22201c;
  --soft: #565047;
  --rule: #d8cfbd;
  --chalk: #1f5a70;
  color-scheme: light;
}
html { background: var(--paper); color: var(--ink); }
body {
  margin: 0;
  font: 1.0625rem/1.55 "Atkinson Hyperlegible Next", "Atkinson Hyperlegible", Verdana, "DejaVu Sans", sans-serif;
}
main { max-width: 44rem; margin: 0 auto; padding: 2.5rem 1.25rem 4rem; overflow-wrap: anywhere; }
h1 { margin: 0 0 1.5rem; font-size: 1.75rem; line-height: 1.25; padding-bottom: .75rem; border-bottom: .25rem solid var(--chalk); }
h2 { margin: 2.25rem 0 .5rem; font-size: 1.25rem; line-height: 1.3; color: var(--chalk); }
h3 { margin: 1.5rem 0 .25rem; font-size: 1.0625rem; line-height: 1.35; }
p { margin: .5rem 0; }
ul, ol { margin: .5rem 0; padding-left: 1.5rem; }
li { margin: .25rem 0; }
time { font-family: "Atkinson Hyperlegible Mono", "DejaVu Sans Mono", monospace; font-size: .9em; white-space: nowrap; }
.table { overflow-x: auto; margin: 1rem 0; }
.table:focus-visible { outline: .1875rem solid var(--chalk); outline-offset: .25rem; }
table { width: 100%; border-collapse: collapse; overflow-wrap: normal; font-size: .9375rem; line-height: 1.4; font-variant-numeric: tabular-nums; }
caption { text-align: left; color: var(--soft); padding-bottom: .375rem; }
th, td { padding: .375rem .5rem; text-align: left; vertical-align: top; border-bottom: 1px solid var(--rule); }
thead th { border-bottom: 2px solid var(--ink); font-weight: 600; }
tbody th { font-weight: 600; }
th.end, td.end { text-align: right; }
th.long, td.long { overflow-wrap: anywhere; min-width: 8rem; }
.notice { margin: 1.5rem 0; padding: .25rem 1rem .5rem; border: 1px solid var(--ink); border-left-width: .5rem; }
.notice h2 { margin: .5rem 0 .25rem; font-size: 1.0625rem; color: var(--ink); }
figure { margin: 1rem 0; }
img { max-width: 100%; height: auto; }
figcaption { color: var(--soft); }
@media screen and (max-width: 40rem) { .wide table { min-width: 40rem; } }
@page { size: A4; margin: 18mm 20mm; }
@media print {
  html { background: none; }
  main { max-width: none; margin: 0; padding: 0; }
  body { font-size: 10.5pt; }
  h1, h2, h3, caption { break-after: avoid; }
  tr, li, figure, .notice { break-inside: avoid; }
  .table { overflow: visible; }
  thead { display: table-header-group; }
}
`;
