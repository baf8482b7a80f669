/**
 * How the page looks: the answer with what would turn it beside it, then sections in two columns as
 * wide as the page; light and dark by the reader's own setting, one column on a phone, tables that
 * scroll within themselves, and a print style without what only a screen can do or what was left
 * closed. Text has a contrast of at least 4.5 to 1 on its ground; what is better or worse also has a
 * mark or a shape of its own.
 */
export const STYLES = `
:root { color-scheme: light dark; --paper: #fcfbf8; --ink: #22262b; --soft: #5a6068; --line: #d5d1c7; --raised: #f2efe7; --link: #0b5c7a; --mark: #8a4a0c; --better: #0b5c7a; --worse: #9a3412; }
@media (prefers-color-scheme: dark) {
  :root { --paper: #17191c; --ink: #e8e5df; --soft: #a9aeb5; --line: #3b3f45; --raised: #212428; --link: #7cc3de; --mark: #e9a868; --better: #7cc3de; --worse: #f0a080; }
}
* { box-sizing: border-box; }
html { font: 93.75%/1.5 system-ui, sans-serif; background: var(--paper); color: var(--ink); -webkit-text-size-adjust: 100%; }
body { margin: 0 auto; max-width: 82rem; padding: 1rem 2.5rem 4rem; overflow-wrap: anywhere; }
a { color: var(--link); }
header { display: flex; flex-wrap: wrap; gap: .25rem 1.5rem; align-items: baseline; padding-bottom: .6rem; border-bottom: 3px solid var(--ink); }
h1 { font-size: 1.1rem; line-height: 1.3; margin: 0; color: var(--link); flex: 1 0 100%; }
h2 { font-size: 1.6rem; line-height: 1.2; margin: 0 0 .75rem; }
h3 { font-size: 1.1rem; line-height: 1.3; margin: 1.4rem 0 .4rem; }
h2 + h3 { margin-top: 0; }
section { margin: 2.25rem 0 0; padding: 1.5rem 0 0; border-top: 1px solid var(--line); }
main > .lead { margin: 1.2rem 0 0; max-width: 46rem; }
#answer, main > section:first-child { border-top: 0; margin-top: 0; padding-top: 1rem; }
#answer > h2, .heard { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
p, ul, ol { margin: .55rem 0; max-width: 46rem; }
ul, ol { padding-left: 1.3rem; }
li { margin: .2rem 0; }
small, .meta, .note { color: var(--soft); }
small { font-size: .85em; }
.note { font-size: .9rem; }
.meta, .invented { margin: 0; font-size: .93rem; }
.invented { color: var(--mark); font-weight: 700; }
.skip { position: absolute; left: -99rem; }
.skip:focus { position: static; }
nav ul { list-style: none; margin: .3rem 0 0; padding: 0; display: flex; flex-wrap: wrap; gap: 0 1.2rem; max-width: none; font-size: .93rem; }
nav a { display: inline-block; padding: .15rem 0; }
:focus-visible { outline: 3px solid var(--link); outline-offset: 2px; }
.hero { display: grid; grid-template-columns: minmax(0, 2fr) minmax(0, 1fr); gap: 3rem; }
.pair, .grid { display: grid; grid-template-columns: repeat(2, minmax(0, 1fr)); gap: 1.5rem 3rem; align-items: start; }
.columns { columns: 2; column-gap: 3rem; }
.halves > ul { display: grid; grid-template-columns: repeat(2, minmax(0, 1fr)); gap: 0 3rem; max-width: none; }
.halves + .grid { margin-top: 1.2rem; }
.columns > ul, .columns > div > ul { margin-top: 0; }
.columns > p, .columns li, .columns > .wide { break-inside: avoid; }
.columns h3 { break-after: avoid; break-inside: avoid; }
.columns > p, .columns > :first-child, .columns > div > :first-child { margin-top: 0; }
.columns > div { padding-bottom: 1.2rem; }
.beside h3:first-child { margin-top: 0; }
.lead { font-size: 1.85rem; line-height: 1.2; font-weight: 700; margin: 0 0 1rem; max-width: none; text-wrap: balance; }
.lead:has(+ .note) { margin-bottom: .4rem; }
.lead + .because { margin-top: -.4rem; }
.because ul { font-size: 1.1rem; line-height: 1.4; margin: 0 0 1.25rem; padding-left: 1.2rem; }
.first { border-left: 4px solid var(--worse); padding: .1rem 0 .1rem .8rem; margin: 0 0 1rem; }
.figures { display: grid; grid-template-columns: repeat(3, minmax(0, 1fr)); gap: 1.5rem; margin: 1.25rem 0 .25rem; }
.figures > div { display: grid; grid-template-rows: subgrid; grid-row: span 2; row-gap: 0; border-top: 1px solid var(--ink); padding-top: .4rem; }
.figures dt { font-weight: 700; line-height: 1.3; }
.figures dd { margin: 0; }
.figures dd b { font-size: 2.1rem; line-height: 1.1; letter-spacing: -.02em; }
.figures .was { font-size: 1.35rem; color: var(--soft); }
.figures .unit { display: block; color: var(--soft); font-size: .9rem; line-height: 1.35; }
.figures small { display: block; margin-top: .15rem; line-height: 1.35; }
.key { font-size: .85rem; color: var(--soft); }
.key span { display: inline-block; forced-color-adjust: none; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
.key .ring { width: 2px; height: .9em; background: var(--soft); vertical-align: -.1em; margin: 0 .2em; }
.key .disc { width: .6em; height: .6em; border-radius: 50%; background: var(--better); margin-left: .5em; }
.key .square { width: .55em; height: .55em; background: var(--worse); margin-left: .5em; }
.key .reach { width: 1.4em; height: .45em; background: var(--soft); opacity: .4; vertical-align: .1em; margin-left: .3em; }
.better { color: var(--better); }
.worse { color: var(--worse); }
.same { color: inherit; }
td .better, td .worse { font-weight: 700; white-space: nowrap; }
.name, time { white-space: nowrap; }
.strip { display: block; overflow: visible; max-width: 100%; }
.strip path { fill: none; stroke-width: 1.5; }
.strip .rail { stroke: var(--line); }
.strip .reach { stroke: var(--soft); stroke-width: 7; opacity: .4; }
.strip .base { stroke: var(--ink); stroke-width: 2; }
.strip .way, .strip circle { stroke: var(--better); }
.strip circle { fill: var(--better); stroke: none; }
.strip.worse .way { stroke: var(--worse); }
.strip.worse rect { fill: var(--worse); }
.strip.same .way { stroke: var(--soft); }
.strip.same circle { fill: var(--soft); }
.turns { list-style: none; padding: 0; margin: .75rem 0; }
.turns li { display: flex; flex-wrap: wrap; justify-content: space-between; gap: 0 1rem; margin: .8rem 0; }
.turns b { margin-left: auto; text-align: right; }
.turns .turns { color: var(--worse); margin: 0; }
.turns small { flex: 1 0 100%; display: flex; flex-wrap: wrap; justify-content: space-between; gap: 0 .5rem; }
.turn { flex: 1 0 100%; width: 100%; height: 16px; }
.turn path { fill: none; }
.turn .holds { stroke: var(--better); stroke-width: 5; }
.turn .lost { stroke: var(--worse); stroke-width: 5; stroke-dasharray: 3 2; }
.turn .at { stroke: var(--worse); stroke-width: 2; }
.turn circle { fill: var(--ink); }
.beside ul:not(.turns) { list-style: none; padding: 0; font-size: .93rem; }
.sure { width: 100%; height: 14px; }
.sure .frame { fill: none; stroke: var(--soft); }
.sure .stated { fill: var(--better); }
.ends { display: flex; justify-content: space-between; margin: 0 0 .5rem; font-size: .9rem; }
.asked > * { margin: 0; max-width: none; padding: .3rem 0 .3rem 1.1rem; border-bottom: 1px solid var(--line); }
.asked > :first-child { border-top: 2px solid var(--ink); }
.asked summary { padding: 0; color: inherit; list-style-position: outside; }
.asked summary > *, .asked > p > * { display: inline-block; vertical-align: top; }
.asked b { width: 38%; padding-right: 1.5rem; }
.asked summary b { color: var(--link); }
.asked :is(summary, p) > span:not(.name) { width: 61%; }
.asked details > p { margin: .3rem 0 .2rem calc(38% + .3em); max-width: 46rem; }
.wide { position: relative; container-type: inline-size; overflow-x: auto; margin: 1rem 0; }
table { border-collapse: collapse; font-size: .9rem; line-height: 1.35; font-variant-numeric: tabular-nums; overflow-wrap: normal; }
caption { text-align: left; color: var(--soft); padding: 0 0 .4rem; }
caption span { position: sticky; left: 0; display: inline-block; max-width: 100cqi; }
th, td { padding: .35rem .6rem; border-bottom: 1px solid var(--line); vertical-align: top; text-align: right; }
thead th { vertical-align: bottom; border-bottom: 2px solid var(--ink); font-weight: 600; min-width: 4rem; }
thead small { font-weight: 400; display: inline-block; line-height: 1.2; }
.word, tbody th { text-align: left; }
td.word { min-width: 8rem; }
tbody th { font-weight: 400; min-width: 12rem; max-width: 24rem; position: sticky; left: 0; background: var(--paper); }
.plans { width: 100%; font-size: .87rem; }
.plans th, .plans td { text-align: left; padding: .35rem .35rem; }
.plans tbody th small { display: block; line-height: 1.25; }
.plans td small { display: block; line-height: 1.15; }
.plans .figure { text-align: right; }
.plans td > span { white-space: nowrap; }
/* What has no mark leaves its room free, so that digits stand below digits. */
.plans td > span.same { padding-right: 1.05em; }
.plans td span[aria-hidden] { display: inline-block; width: 1.05em; text-align: right; }
.plans .strip { margin-left: auto; }
.plans thead th { min-width: 3.9rem; }
.plans td.word { min-width: 6.5rem; }
.marked th, .marked td { background: var(--raised) !important; }
.receipt tr:last-child > * { border-top: 2px solid var(--ink); border-bottom: 0; font-size: 1.1em; }
.receipt { width: 100%; }
.balances td { white-space: nowrap; }
.balances tbody th { min-width: 0; }
code { font: .85em/1.4 ui-monospace, monospace; }
pre { overflow: auto; max-height: 30rem; background: var(--raised); padding: .75rem; overflow-wrap: normal; }
details { margin: .5rem 0; }
summary { cursor: pointer; color: var(--link); padding: .15rem 0; }
details .wide { max-height: 24rem; overflow: auto; }
.picture { margin: 0; padding: 0; max-width: 36rem; }
.picture h3 { margin: 0 0 .4rem; min-height: 2.6em; }
.picture h3::first-letter { text-transform: uppercase; }
.drawing { position: relative; touch-action: pan-y; }
.drawing svg { display: block; max-width: 100%; height: auto; }
.narrow-only, .key .on-phone, .on-paper { display: none; }
.reading { min-height: 3.2em; margin: .3rem 0 0; padding: .3rem .6rem; background: var(--raised); font-size: .9rem; font-variant-numeric: tabular-nums; }
.pointer { position: absolute; top: 0; bottom: 0; width: 0; border-left: 1px solid currentColor; pointer-events: none; }
.choices { position: sticky; top: 0; z-index: 1; background: var(--raised); border: 1px solid var(--line); padding: .5rem .75rem; margin-bottom: 1.25rem; display: flex; flex-wrap: wrap; gap: .25rem 1.25rem; align-items: end; }
.choices[hidden] { display: none; }
.picture .drawing, .picture summary, .picture .wide { scroll-margin-top: 14rem; }
.choices p { margin: .15rem 0; max-width: 100%; }
.choices label { display: block; font-size: .8rem; color: var(--soft); }
.choices fieldset { border: 0; margin: .15rem 0; padding: 0; }
.choices legend { padding: 0; font-size: .8rem; color: var(--soft); }
.choices fieldset label { display: inline-block; color: var(--ink); font-size: .9rem; margin-right: .8rem; padding: .15rem 0; }
.choices .told { font-size: .8rem; color: var(--soft); min-height: 1.3em; }
select { font: inherit; max-width: 100%; padding: .3rem; color: var(--ink); background: var(--paper); border: 1px solid var(--soft); border-radius: 3px; }
[hidden] { display: none !important; }
.try { display: grid; grid-template-columns: minmax(0, 1fr) minmax(0, 2fr); gap: 3rem; margin-top: 2rem; align-items: start; }
.panel { background: var(--raised); border-top: 3px solid var(--mark); padding: 1rem 1.25rem; }
.panel { position: sticky; top: 1rem; }
.panel h3 { margin-top: 0; }
.knob { display: grid; grid-template-columns: minmax(45%, 1fr) auto; gap: 0 1rem; }
.knob output { font-weight: 700; font-variant-numeric: tabular-nums; text-align: right; }
.knob input { grid-column: 1 / -1; width: 100%; min-height: 1.75rem; margin: 0; accent-color: var(--mark); }
input[type="checkbox"] { width: 1.1em; height: 1.1em; vertical-align: -.15em; accent-color: var(--link); }
.try input[type="checkbox"] { accent-color: var(--mark); }
.panel p:not(.knob) label { display: grid; grid-template-columns: auto minmax(0, 1fr); gap: .5rem; align-items: baseline; padding: .15rem 0; }
.try table { width: 100%; }
.try td, .try tbody th { padding: .2rem .5rem; min-width: 0; }
.try tbody th { max-width: none; overflow-wrap: anywhere; }
.try td { white-space: nowrap; }
.try .unit { color: var(--soft); }
.try thead th { min-width: 0; padding: .2rem .5rem; }
.try.stale:not(.rest) #try-figures td:nth-of-type(2), .try.stale:not(.rest) #try-figures td:nth-of-type(3) { opacity: .75; font-style: italic; }
.try.stale:not(.rest) #try-figures caption::after { content: ' (older figures, the new ones are on their way)'; }
/* While nothing is tried, only what things are now. */
.try.rest :is(.of-tried, .strip, thead th:nth-child(n + 3), td:nth-child(n + 3)) { display: none; }
.try.rest table { max-width: 30rem; }
#try-told { min-height: 1.5em; }
.days { display: block; width: 100%; height: auto; margin: .5rem 0; }
.days path { fill: none; stroke-width: 1.4; }
.days .was { stroke: var(--soft); stroke-dasharray: 3 2; }
.days .is { stroke: var(--mark); }
.days .mark { stroke: var(--ink); opacity: .5; stroke-dasharray: 5 4; }
.days .tick { stroke: var(--soft); }
.days text { fill: var(--soft); font-size: 11px; }
button { font: inherit; padding: .3rem .8rem; color: var(--ink); background: var(--paper); border: 1px solid var(--soft); border-radius: 3px; cursor: pointer; }
footer { margin-top: 3rem; border-top: 1px solid var(--line); color: var(--soft); font-size: .85rem; }
@media screen and (max-width: 60rem) {
  body { padding: .75rem 1rem 3rem; }
  .hero, .pair, .grid, .try { grid-template-columns: minmax(0, 1fr); gap: 1.5rem; }
  .columns { columns: 1; }
  .halves > ul { grid-template-columns: minmax(0, 1fr); }
  .asked summary > *, .asked > p > * { display: inline; }
  .asked b { padding: 0; }
  .asked details > p { margin-left: 0; }
  .picture h3 { min-height: 0; }
  .panel { position: static; }
}
/* Plans as blocks: name, money on one scale at the right, and what clearly changes. */
@media screen and (max-width: 50rem) {
  .key .on-phone { display: inline; }
  .plans, .plans tbody, .plans caption { display: block; }
  .plans thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  .plans tbody tr { display: flex; flex-wrap: wrap; align-items: baseline; gap: 0 .9rem; padding: .45rem 0; border-bottom: 1px solid var(--line); }
  .plans tbody tr:first-child { border-top: 2px solid var(--ink); }
  .plans tbody tr > * { border: 0; padding: 0; min-width: 0; max-width: none; position: static; }
  .plans tbody th { flex: 1 1 60%; font-size: 1.05em; }
  .plans tbody th small { line-height: 1.35; }
  .plans td[data-head] { order: 3; text-align: left; white-space: nowrap; }
  .plans td.word { order: 2; flex: 0 0 100%; }
  .plans tbody td { position: relative; }
  .plans .heard { right: 0; }
  .plans tr:first-child td.word + td { white-space: normal; }
  .plans td.word + td { order: 1; align-self: flex-start; width: 5rem; text-align: right; }
  .plans td[data-head]:not(.word + td)::before { content: attr(data-head) ' '; color: var(--soft); }
  .plans tr:first-child td[data-unit]::after { content: ' ' attr(data-unit); color: var(--soft); }
  .plans td .strip, .plans td small { display: none; }
  .plans td.word + td .strip { display: block; }
  .plans tr:not(:first-child) td:has(> span.same:not(.told)):not(.word + td) { display: none; }
  .plans td:not(.word + td) span[aria-hidden] { width: auto; }
  .plans td:not(.word + td) > span.same { padding: 0; }
  .plans tbody .marked { background: var(--raised); padding: .45rem .5rem; }
}
@media screen and (max-width: 34rem) {
  .wide-only { display: none; }
  .narrow-only { display: block; }
  .lead { font-size: 1.5rem; }
  .lead.lengthy { font-size: 1.2rem; line-height: 1.25; }
  .because ul { font-size: 1rem; margin-bottom: .9rem; }
  nav { margin: 0 -.4rem; max-width: calc(100% + .8rem); }
  nav ul { flex-wrap: nowrap; overflow-x: auto; white-space: nowrap; padding: .4rem; scroll-padding: .4rem; margin: 0; }
  .figures { grid-template-columns: minmax(0, 1fr); gap: .6rem; margin-top: .9rem; }
  .figures > div { padding-top: .25rem; }
  .figures dd { display: flex; flex-wrap: wrap; align-items: baseline; gap: 0 .4rem; }
  .figures dd b { font-size: 1.6rem; }
  .figures .was { font-size: 1.15rem; }
  .figures .narrow-only { margin-left: auto; align-self: center; }
  .figures small { flex: 1 0 100%; margin: 0; }
  tbody th { min-width: 7rem; max-width: 10rem; }
  .lengthy { white-space: normal; }
  .receipt td.word, .receipt thead th { min-width: 0; }
  .picture h3 { font-size: 1rem; }
  .choices { position: static; }
  .days text { font-size: 19px; }
}
@media print {
  :root { --paper: #fff; --ink: #000; --soft: #444; --line: #bbb; --raised: #fff; --link: #000; --mark: #000; --better: #0b4c66; --worse: #8a2c0c; color-scheme: light; }
  @page { size: A4; margin: 12mm; }
  html { font-size: 8.5pt; line-height: 1.4; }
  body { max-width: none; padding: 0; }
  nav, .on-screen, .choices, .try, .skip, .reading, .pointer, details:not([open], .asked *), .picture details { display: none !important; }
  section { margin-top: 3mm; padding-top: 2mm; }
  .hero, .pair, .grid { gap: 4mm 6mm; }
  .lead { font-size: 1.7rem; }
  .figures dd b { font-size: 1.6rem; }
  h2, h3, caption { break-after: avoid; }
  /* A heading is printed where there is room for some of what it heads, too. */
  .key { break-after: avoid; }
  h2, section > h3 { break-inside: avoid; }
  h2::after, section > h3::after { content: ''; display: block; height: 40mm; margin-bottom: -40mm; }
  #pictures > h2::after, #doubts > h2::after { height: 80mm; margin-bottom: -80mm; }
  #air > h3::after { height: 20mm; margin-bottom: -20mm; }
  .asked + h3::after { height: 80mm !important; margin-bottom: -80mm !important; }
  .on-paper + .pair { margin-top: 3mm; }
  figure, tr, li, .lead, .figures, .turns li { break-inside: avoid; }
  .wide-only { display: none; }
  .narrow-only, .on-paper { display: block; }
  .on-paper ul { columns: 3; column-gap: 6mm; max-width: none; margin: 0; padding: 0; list-style: none; font-size: .9em; }
  .on-paper li { margin: 0 0 .5mm; }
  .asked { font-size: .95em; columns: 2; column-gap: 6mm; }
  .asked > *, .asked > :first-child { padding: 0; border: 0; margin-bottom: .3rem; orphans: 3; widows: 3; }
  .asked :is(summary, b, :is(summary, p) > span, details > p) { display: inline !important; width: auto; padding: 0; margin: 0; }
  .asked summary b { color: inherit; }
  .asked ::details-content { display: inline; content-visibility: visible; }
  .columns > div { padding-bottom: .5rem; }
  .halves > ul { gap: 0 6mm; }
  /* Down one column, then down the other: rows of pictures of unlike height would leave sheets half empty. */
  #purchase .pair, .grid { display: block; columns: 2; column-gap: 6mm; }
  .grid > * { margin-bottom: 4mm; }
  .grid .picture svg { max-width: 78mm; }
  #air .picture svg { max-width: 74mm; }
  #picture-trade-off { max-width: 78mm; }
  .picture h3 { font-size: 1rem; min-height: 0; }
  .wide, details .wide { overflow: visible; max-height: none; margin: 2mm 0; }
  table { font-size: 6.8pt; width: 100%; }
  th, td, .plans th, .plans td { padding: 1.2pt 2pt; }
  .plans .strip, .plans tbody th small, .plans tbody th br { display: none !important; }
  .plans thead th, .plans td { min-width: 0; }
  .plans td.figure small { overflow-wrap: anywhere; white-space: normal; }
  .plans small { overflow-wrap: anywhere; }
  .word, .long, tbody th { overflow-wrap: anywhere; }
  td.figure:not(.long) { white-space: nowrap; }
  thead th { hyphens: auto; }
  thead th, td.word { min-width: 0; }
  tbody th { position: static; min-width: 24mm; }
  .plans { font-size: 6.8pt; }
  .plans thead th:first-child { width: 32mm; }
  .plans thead th:nth-child(2) { width: 28mm; }
  thead { display: table-header-group; }
  pre { max-height: none; white-space: pre-wrap; overflow-wrap: anywhere; font-size: 7pt; }
  footer { margin-top: 3mm; }
  a { text-decoration: none; }
}
`;
