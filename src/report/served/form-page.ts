import type { FormField, StartContext } from '../../living/questions.ts';
import { type Document, documentFrame } from '../page/document-frame.ts';
import { html, raw } from '../page/html.ts';
import { inertJson } from '../page/inert-json.ts';
import { STYLES } from '../page/styles.ts';
import { fieldId, fieldMarkup } from './field-markup.ts';
import { FORM_STYLES } from './form-styles.ts';

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
