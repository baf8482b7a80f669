import type { TriedFigure } from '../page/try-figures.ts';

/** Puts the figures of a span into the page: those of the whole period into its table. */
export function showFigures(name: string, whole: boolean, figures: readonly TriedFigure[]): void {
  const rows = figures.map(rowOf);
  if (whole) {
    document.querySelector('#try-figures tbody')!.replaceChildren(...rows);
    return;
  }
  const id = `try-${name.replaceAll(/[^a-z]+/g, '-')}`;
  const found = document.getElementById(id);
  if (found !== null) {
    found.querySelector('tbody')!.replaceChildren(...rows);
    return;
  }
  const table = element('table');
  table.id = id;
  table.append(element('caption', name), element('tbody'));
  table.querySelector('tbody')!.append(...rows);
  document.getElementById('try-months')!.append(table);
}

function rowOf({ name, unit, before, after, change, look }: TriedFigure): HTMLElement {
  const row = element('tr');
  const head = element('th', name);
  head.setAttribute('scope', 'row');
  const changed = element('td', change);
  if (look !== 'same') changed.append(element('span', look === 'worse' ? ' ▴' : ' ▾'));
  changed.className = look;
  const unitCell = element('td', unit);
  unitCell.className = 'word';
  const tried = element('td');
  tried.append(element('b', after));
  row.append(head, element('td', before), tried, changed, unitCell);
  return row;
}

function element(name: string, text = ''): HTMLElement {
  const made = document.createElement(name);
  made.textContent = text;
  return made;
}
