import { withMinus } from '../../units/minus-sign.ts';
import { spanId, type TriedFigure } from '../page/try-figures.ts';
import { tryStrip } from '../page/try-strip.ts';

/** Puts the figures of a span into the page: those of the whole period into its table. */
export function showFigures(name: string, whole: boolean, figures: readonly TriedFigure[]): void {
  const rows = figures.map(rowOf);
  if (whole) {
    document.querySelector('#try-figures tbody')!.replaceChildren(...rows);
    return;
  }
  document.querySelector(`#${spanId(name)} tbody`)!.replaceChildren(...rows);
}

function rowOf(figure: TriedFigure): HTMLElement {
  const { name, unit, before, after, change, look } = figure;
  const row = element('tr');
  const head = element('th', `${name} `);
  head.setAttribute('scope', 'row');
  const unitPart = element('span', `[${unit}]`);
  unitPart.className = 'unit';
  head.append(unitPart);
  head.insertAdjacentHTML('beforeend', tryStrip(figure).markup);
  const changed = element('td', withMinus(change));
  if (look !== 'same') changed.append(element('span', look === 'worse' ? ' ▴' : ' ▾'));
  changed.className = look;
  const tried = element('td');
  tried.append(element('b', after));
  row.append(head, element('td', before), tried, changed);
  return row;
}

function element(name: string, text = ''): HTMLElement {
  const made = document.createElement(name);
  made.textContent = text;
  return made;
}
