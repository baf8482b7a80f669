/** What only served pages have: how they stand to their files. */
export const SERVED_STYLES = `
.standing { margin: 1rem 0 0; padding: .5rem .75rem; border-left: 4px solid var(--line); background: var(--raised); font-size: .93rem; }
.standing p, .standing ul { margin: .2rem 0; max-width: none; }
.standing li { font: .85rem/1.45 ui-monospace, monospace; }
.standing.good { border-left-color: var(--better); background: none; padding: 0 .6rem; font-size: .85rem; color: var(--soft); }
.standing.running { border-left-color: var(--mark); }
.standing.wrong { border-left-color: var(--worse); position: sticky; top: 0; z-index: 2; max-height: 40vh; overflow: auto; }
.standing.wrong p { color: var(--worse); font-weight: 700; }
main.older section { border-left: 3px dashed var(--worse); padding-left: .75rem; }
@media (max-width: 40rem) { .standing.wrong { position: static; max-height: none; } .standing ul { padding-left: 1.2rem; } .standing li { overflow-wrap: anywhere; } }
@media print { .standing { display: none; } }
`;
