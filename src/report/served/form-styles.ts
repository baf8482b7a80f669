/** What only the form has. */
export const FORM_STYLES = `
body { max-width: 62rem; }
h1 { font-size: 1.6rem; }
header .meta { max-width: 46rem; font-size: 1rem; color: var(--ink); }
section { margin: 1.5rem 0 0; }
form > section:first-of-type { border-top: 0; margin-top: 0; padding-top: 1rem; }
.fields { display: grid; grid-template-columns: repeat(2, minmax(0, 1fr)); gap: 1rem 2.5rem; align-items: start; }
.field { min-width: 0; }
.question { display: block; font-weight: 600; line-height: 1.35; padding: 0; }
.field input[type="text"], .field select { font: inherit; display: block; width: 100%; min-height: 2.5rem; margin: .3rem 0 0; padding: .3rem .5rem; color: var(--ink); background: var(--paper); border: 1px solid var(--soft); border-radius: 3px; }
.field fieldset { border: 0; margin: 0; padding: 0; min-width: 0; }
.field fieldset label { display: block; padding: .2rem 0 .2rem 1.7em; text-indent: -1.7em; }
.field input[type="checkbox"] { accent-color: var(--link); width: 1.1em; height: 1.1em; vertical-align: -.15em; margin: 0 .6em 0 0; }
.field .note, .trouble { margin: .2rem 0 0; }
.trouble { color: var(--worse); font-weight: 600; }
.trouble:empty { display: none; }
.field [aria-invalid] { border: 2px solid var(--worse) !important; }
.troubles { margin: 1rem 0 0; padding: .75rem 1rem; border: 3px solid var(--worse); }
.troubles h2 { font-size: 1.1rem; margin: 0; color: var(--worse); }
.send { margin: 2rem 0; }
.send button { font-weight: 700; padding: .6rem 1.2rem; color: var(--paper); background: var(--link); border-color: var(--link); }
@media screen and (max-width: 44rem) { .fields { grid-template-columns: minmax(0, 1fr); } }
`;
