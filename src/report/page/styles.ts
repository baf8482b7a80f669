/**
 * How the page looks: one column, answer first; light and dark by the reader's own setting, tables
 * that scroll within themselves, and a print style without what only a screen can do or what was left closed.
 * Text has a contrast of at least 4.5 to 1 on its ground.
 */
export const STYLES = `
:root { color-scheme: light dark; --paper: #fcfbf8; --ink: #22262b; --soft: #5a6068; --line: #d5d1c7; --raised: #f2efe7; --link: #0b5c7a; --mark: #8a4a0c; }
@media (prefers-color-scheme: dark) {
  :root { --paper: #17191c; --ink: #e8e5df; --soft: #a9aeb5; --line: #3b3f45; --raised: #212428; --link: #7cc3de; --mark: #e9a868; }
}
* { box-sizing: border-box; }
html { font: 100%/1.55 system-ui, sans-serif; background: var(--paper); color: var(--ink); -webkit-text-size-adjust: 100%; }
body { margin: 0 auto; max-width: 68rem; padding: 1rem 1rem 4rem; overflow-wrap: anywhere; }
a { color: var(--link); }
h1 { font-size: 1.9rem; line-height: 1.2; margin: 1.5rem 0 .5rem; }
h2 { font-size: 1.4rem; line-height: 1.25; margin: 3rem 0 .75rem; padding-top: .75rem; border-top: 3px solid var(--ink); }
h3 { font-size: 1.05rem; line-height: 1.35; margin: 1.75rem 0 .5rem; }
p, ul, ol { margin: .6rem 0; max-width: 46rem; }
.picture { max-width: 46rem; }
li { margin: .25rem 0; }
small, .meta { color: var(--soft); }
small { font-size: .85em; }
.invented { border: 2px solid var(--mark); color: var(--mark); font-weight: 700; padding: .4rem .75rem; display: inline-block; }
.lead { font-size: 1.3rem; line-height: 1.4; font-weight: 600; border-left: 5px solid var(--link); padding-left: .9rem; }
.skip { position: absolute; left: -99rem; }
.skip:focus { position: static; }
nav ul { list-style: none; padding: 0; display: flex; flex-wrap: wrap; gap: .15rem 1.1rem; }
:focus-visible { outline: 3px solid var(--link); outline-offset: 2px; }
.wide { overflow-x: auto; margin: 1rem 0; }
table { border-collapse: collapse; font-size: .87rem; line-height: 1.35; font-variant-numeric: tabular-nums; overflow-wrap: normal; }
caption { text-align: left; color: var(--soft); padding: 0 0 .4rem; }
th, td { padding: .35rem .6rem; border-bottom: 1px solid var(--line); vertical-align: top; text-align: right; }
thead th { vertical-align: bottom; border-bottom: 2px solid var(--ink); font-weight: 600; min-width: 4rem; }
.word, tbody th { text-align: left; }
td.word { min-width: 8rem; }
tbody th { font-weight: 400; min-width: 12rem; max-width: 24rem; position: sticky; left: 0; background: var(--paper); }
code { font: .85em/1.4 ui-monospace, monospace; }
pre { overflow: auto; max-height: 30rem; background: var(--raised); padding: .75rem; overflow-wrap: normal; }
details { margin: .5rem 0; }
summary { cursor: pointer; color: var(--link); }
details .wide { max-height: 24rem; overflow: auto; }
.picture { margin: 2rem 0; padding: 0; }
.picture h3 { margin-top: 0; }
.drawing { position: relative; touch-action: pan-y; }
.drawing svg { display: block; max-width: 100%; height: auto; }
.narrow-only, .only-narrow { display: none; }
.reading { min-height: 3.2em; margin: .3rem 0 0; padding: .3rem .6rem; background: var(--raised); font-size: .9rem; font-variant-numeric: tabular-nums; }
.pointer { position: absolute; top: 0; bottom: 0; width: 0; border-left: 1px solid currentColor; pointer-events: none; }
.choices { position: sticky; top: 0; z-index: 1; background: var(--raised); border: 1px solid var(--line); padding: .5rem .75rem; display: flex; flex-wrap: wrap; gap: .25rem 1.25rem; align-items: end; }
.choices[hidden] { display: none; }
.picture .drawing, .picture summary, .picture .wide { scroll-margin-top: 9rem; }
.choices p { margin: .15rem 0; max-width: 100%; }
.choices label { display: block; font-size: .8rem; color: var(--soft); }
.choices .told { font-size: .8rem; color: var(--soft); min-height: 1.3em; }
select { font: inherit; max-width: 100%; padding: .3rem; color: var(--ink); background: var(--paper); border: 1px solid var(--soft); border-radius: 3px; }
footer { margin-top: 3rem; border-top: 1px solid var(--line); color: var(--soft); font-size: .85rem; }
@media screen and (max-width: 34rem) {
  .wide-only { display: none; }
  .narrow-only { display: block; }
  body { padding: .5rem 1rem 3rem; }
  h1 { font-size: 1.5rem; }
  .lead { font-size: 1.12rem; }
  tbody th { min-width: 7rem; max-width: 9.5rem; }
  tbody th small, tbody th br { display: none; }
  .only-narrow { display: block; }
  .choices { position: static; }
}
@media print {
  :root { --paper: #fff; --ink: #000; --soft: #444; --line: #bbb; --raised: #fff; --link: #000; --mark: #000; color-scheme: light; }
  @page { size: A4; margin: 14mm; }
  html { font-size: 10pt; }
  body { max-width: none; padding: 0; }
  nav, .choices, .skip, .reading, .pointer, .picture details, details:not([open]) { display: none !important; }
  section { break-before: page; }
  section:first-of-type { break-before: auto; }
  h2, h3, caption { break-after: avoid; }
  figure, tr, .lead { break-inside: avoid; }
  .wide, details .wide { overflow: visible; max-height: none; }
  table { font-size: 7.4pt; width: 100%; }
  th, td { padding: 2pt 3pt; }
  .word, .long, tbody th { overflow-wrap: anywhere; }
  td.figure:not(.long) { white-space: nowrap; }
  thead th { hyphens: auto; }
  thead th, td.word { min-width: 0; }
  tbody th { position: static; min-width: 34mm; }
  thead { display: table-header-group; }
  pre { max-height: none; white-space: pre-wrap; overflow-wrap: anywhere; font-size: 7.4pt; }
  a { text-decoration: none; }
}
`;
