import { drawTwice } from '../page/draw-twice.ts';
import { figure } from '../page/figure.ts';
import type { PictureData } from '../page/picture-data.ts';
import { type PictureId, withPurchase } from '../page/picture-ids.ts';
import { type Choice, MOST_LINES, PICTURES, pictureId } from '../page/pictures.ts';
import { letReadersPoint } from './let-readers-point.ts';

/**
 * Shows the choice of room, plans and week, and draws again the pictures that follow what was
 * changed, by the same functions that drew them first.
 *
 * @param unpack  gives the hours; called at the first change
 * @param first   what the page shows as it is
 * @param bought  number of the plan with the purchase, which some pictures show besides; -1 for none
 */
export function letReadersChoose(unpack: () => PictureData, first: Choice, bought: number): void {
  const form = document.getElementById('choices');
  const told = document.getElementById('choices-told');
  if (form === null || told === null) return;
  let data: PictureData | null = null;
  let choice = first;
  let turn = 0;
  const changed = new Set<keyof Choice>(); // since all was drawn last
  form.hidden = false;
  const take = (key: keyof Choice, value: number | readonly number[]): void => {
    choice = { ...choice, [key]: value };
    changed.add(key);
    drawAgain().catch(() => {
      told.textContent = 'The pictures could not be drawn; they are those of before.';
    });
  };
  for (const key of ['room', 'plan', 'week'] as const) {
    const select = document.getElementById(`choice-${key}`) as HTMLSelectElement;
    select.value = String(first[key]); // some browsers keep what was chosen before a reload
    select.addEventListener('change', () => take(key, Number(select.value)));
  }
  const boxes = [...form.querySelectorAll<HTMLInputElement>('input[name="choice-line"]')];
  for (const box of boxes) {
    box.checked = first.lines.includes(Number(box.value));
    box.addEventListener('change', () => {
      const lines = boxes.filter(({ checked }) => checked).map(({ value }) => Number(value));
      if (lines.length >= 1 && lines.length <= MOST_LINES) return take('lines', lines);
      box.checked = !box.checked;
      told.textContent =
        lines.length === 0
          ? 'One line has to stay.'
          : `No more than ${MOST_LINES} lines: take one away first.`;
    });
  }

  async function drawAgain(): Promise<void> {
    const mine = ++turn;
    told!.textContent = 'Drawing …';
    data ??= unpack();
    const own = data;
    const follow = PICTURES.filter(({ follows }) => follows.some((key) => changed.has(key)));
    const drawn = await drawTwice(
      follow.flatMap((picture) => {
        const id = pictureId(picture);
        const drawable = (shown: Choice, of: PictureId) => ({
          id: of,
          at: (width: number) => picture.draw(own, shown, width),
        });
        const besides = document.getElementById(withPurchase(id)) !== null;
        return [
          drawable(choice, id),
          ...(besides ? [drawable({ ...choice, plan: bought }, withPurchase(id))] : []),
        ];
      }),
    );
    if (mine !== turn) return; // the reader has chosen on meanwhile
    changed.clear();
    for (const twice of drawn) replace(document.getElementById(twice.id), figure(twice).markup);
    told!.textContent = `${drawn.length} pictures drawn again.`;
  }
}

/** The markup is the page's own and escapes what people typed; no script in it would run. */
function replace(old: HTMLElement | null, markup: string): void {
  if (old === null) return;
  const parsed = new DOMParser().parseFromString(markup, 'text/html');
  const fresh = document.adoptNode(parsed.querySelector<HTMLElement>('figure')!);
  const opened = old.querySelector('details')?.open ?? false;
  fresh.querySelector('details')!.open = opened;
  old.replaceWith(fresh);
  letReadersPoint(fresh);
}
