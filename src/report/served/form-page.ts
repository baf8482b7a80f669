import type { FormField, StartContext } from '../../living/questions.ts';
import { type Document, documentFrame } from '../page/document-frame.ts';
import { html, raw } from '../page/html.ts';
import { inertJson } from '../page/inert-json.ts';
import { STYLES } from '../page/styles.ts';
import { fieldId, fieldMarkup } from './field-markup.ts';

/** What a form is made from. */
export interface FormInput {
  /** The scenario that it will write. */
  readonly file: string;
  readonly groups: readonly { readonly title: string; readonly fields: readonly FormField[] }[];
  /** What is wrong besides the fields, in words. */
  readonly troubles: readonly string[];
  readonly context: StartContext;
  /** The form's script, as the build made it. */
  readonly script: string;
  readonly sha256: (text: string) => string;
}

/**
 * The questions of a first scenario as a form. It works without its script, which only lets questions
 * follow the answers before them while somebody fills it in.
 */
export function formPage({ file, groups, troubles, context, script, sha256 }: FormInput): Document {
  const wrong = groups.flatMap(({ fields }) => fields).filter(({ trouble }) => trouble !== '');
  const body = html`<a class="skip" href="#start">Skip to the questions</a>
<header><h1>A first scenario of your home</h1>
<p class="meta">Your answers become <b>${file}</b>, with its weather beside it. Whatever you leave as it is, is taken as usual, and listed as such. Nothing is written before you say so, and never over a file that is there.</p></header>
<main>
${troubles.length + wrong.length === 0 ? null : summary(troubles, wrong)}
<form id="start" method="post" action="./" novalidate autocomplete="off">
<button type="submit" disabled hidden>Enter in a line sends nothing</button>
${groups.map(
  ({ title, fields }, k) => html`
<section aria-labelledby="group-${k}"><h2 id="group-${k}">${title}</h2>
<div class="fields">${fields.map(fieldMarkup)}</div></section>`,
)}
<p class="send"><button type="submit" id="send">Write ${file} and show it</button> <span id="sending" role="status"></span></p>
</form>
</main>
${raw(`<script type="application/json" id="form-data">${inertJson({ context })}</script>`)}`;
  const permits = {
    ...{ styles: STYLES + FORM_STYLES, scripts: [script] },
    ...{ runs: false, follows: false, sends: true },
  };
  return documentFrame(html`A first scenario: ${file}`, body, permits, sha256);
}

/** Has the focus when the page comes, so that it is read first. */
const summary = (troubles: readonly string[], wrong: readonly FormField[]) => html`
<div class="troubles" role="alert" tabindex="-1" autofocus>
<h2>Nothing is written yet</h2>
<ul>${troubles.map((words) => html`<li>${words}</li>`)}${wrong.map(({ id, kind, text, trouble }) => html`<li><a href="#${fieldId(id)}${kind === 'several' ? '' : '-input'}">${text}</a> ${trouble}</li>`)}</ul>
</div>`;

/** What only the form has. */
const FORM_STYLES = `
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
