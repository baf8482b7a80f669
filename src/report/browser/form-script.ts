import {
  answersOfForm,
  type FormField,
  formFields,
  QUESTIONNAIRE,
  type StartContext,
} from '../../living/questions.ts';
import { fieldId, fieldMarkup } from '../served/field-markup.ts';

// What runs in the form of a first scenario: questions, choices and usual answers follow what was
// answered before them, by the rules that judge the answers in the end.

const { context } = JSON.parse(document.getElementById('form-data')!.textContent ?? '') as {
  context: StartContext;
};
const form = document.getElementById('start') as HTMLFormElement;

form.addEventListener('change', ({ target }) => {
  if (target instanceof HTMLInputElement && target.type === 'checkbox') keepApart(target);
  const entries = [...new FormData(form)].map(([name, value]) => [name, String(value)] as const);
  const answers = answersOfForm(QUESTIONNAIRE, entries);
  for (const field of formFields(QUESTIONNAIRE, answers, context)) show(field);
});
form.addEventListener('submit', () => {
  document.getElementById('sending')!.textContent = 'Writing …';
});
addEventListener('pageshow', () => {
  document.getElementById('sending')!.textContent = '';
});

/** "As usual" and any other choice put each other off. */
function keepApart({ name, value, checked }: HTMLInputElement): void {
  if (!checked) return;
  for (const box of form.querySelectorAll<HTMLInputElement>('input[type="checkbox"]')) {
    if (box.name === name && (box.value === '') !== (value === '')) box.checked = false;
  }
}

/** Whatever follows other answers is put anew; what somebody types in stays, with the focus. */
function show(field: FormField): void {
  const place = document.getElementById(fieldId(field.id))!;
  const parsed = new DOMParser().parseFromString(fieldMarkup(field).markup, 'text/html');
  const fresh = parsed.getElementById(fieldId(field.id))!;
  place.hidden = fresh.hidden;
  for (const part of ['.question', '.usual', '.trouble']) {
    const [old, now] = [place.querySelector(part), fresh.querySelector(part)];
    if (old !== null && now !== null && old.textContent !== now.textContent) {
      old.textContent = now.textContent;
    }
  }
  const input = place.querySelector('input[type="text"], select');
  const freshInput = fresh.querySelector('input[type="text"], select');
  showFirstBox(place, fresh);
  if (input === null || freshInput === null) return;
  if (freshInput.hasAttribute('aria-invalid')) input.setAttribute('aria-invalid', 'true');
  else input.removeAttribute('aria-invalid');
  if (input instanceof HTMLSelectElement && textsOf(input) !== textsOf(freshInput)) {
    const chosen = (freshInput as HTMLSelectElement).value; // a list chooses anew when one is taken from it
    input.replaceChildren(...document.adoptNode(freshInput).childNodes);
    input.value = chosen;
  }
}

/** The words of "as usual" among several. */
function showFirstBox(place: Element, fresh: Element): void {
  const [old, now] = [place, fresh].map((one) => one.querySelector('fieldset label'));
  const [words, others] = [old?.lastChild, now?.lastChild];
  if (words && others && words.textContent !== others.textContent) {
    words.textContent = others.textContent;
  }
}

const textsOf = (list: Element): string =>
  JSON.stringify([...list.children].map((one) => [one.getAttribute('value'), one.textContent]));
