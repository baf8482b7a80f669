import { type FormField, SHOWN } from '../../living/questions.ts';
import { type Html, html } from '../page/html.ts';

/** A question with its label, what holds where nobody answers, and what is wrong with the answer. */
export function fieldMarkup(field: FormField): Html {
  const { id, asked, given } = field;
  const hidden = asked || given !== null ? null : html` hidden`;
  return html`
<div class="field" id="${fieldId(id)}"${hidden}>
${field.kind === 'several' ? several(field) : single(field)}
<p class="trouble" id="${fieldId(id)}-trouble">${field.trouble}</p>
</div>`;
}

/** Id of a field; its input has `-input` behind it. */
export const fieldId = (id: string): string => `field-${id.replaceAll(' ', '-')}`;

function single(field: FormField): Html {
  const { id, kind, text, usual } = field;
  const own = fieldId(id);
  const named = html`id="${own}-input" name="${id}" ${told(field)}`;
  return html`<label class="question" for="${own}-input">${text}</label>
${
  kind === 'one'
    ? html`<select ${named}>${optionsMarkup(field)}</select>`
    : html`<input type="text" ${named} value="${typeof field.given === 'string' ? field.given : ''}" autocomplete="off" spellcheck="false">
<p class="note usual" id="${own}-usual">${field.asked ? `Left empty: ${usual}` : 'Leave it empty.'}</p>`
}`;
}

/** Choices of a list; an answer that is none of them any more stays to be seen. */
function optionsMarkup({ choices, usual, given }: FormField): Html {
  const strange = typeof given === 'string' && !choices.some(({ value }) => value === given);
  const option = (value: string, label: string): Html =>
    html`<option value="${value}"${value === (given ?? '') ? html` selected` : null}>${label}</option>`;
  return html`${option('', `As usual: ${usual}`)}${choices.map(({ value, label, hint }) => option(value, words(value, label, hint)))}${strange ? option(given, given) : null}`;
}

function several(field: FormField): Html {
  const { id, choices, given, text, usual } = field;
  const box = (value: string, checked: boolean, label: string): Html =>
    html`<label><input type="checkbox" name="${id}" value="${value}"${checked ? html` checked` : null}> ${label}</label>`;
  return html`<fieldset ${told(field)}><legend class="question">${text}</legend>
<input type="hidden" name="${SHOWN}" value="${id}">
${box('', given === null, `as usual: ${usual}`)}
${choices.map(({ value, label, hint }) => box(value, (given ?? []).includes(value), words(value, label, hint)))}
</fieldset>`;
}

/** What a screen reader says with a field. */
function told({ id, kind, trouble }: FormField): Html {
  const own = fieldId(id);
  const by = kind === 'line' ? `${own}-usual ${own}-trouble` : `${own}-trouble`;
  const invalid = trouble === '' || kind === 'several' ? null : html` aria-invalid="true"`;
  return html`aria-describedby="${by}"${invalid}`;
}

const words = (value: string, label = value, hint = ''): string =>
  hint === '' ? label : `${label} (${hint})`;
