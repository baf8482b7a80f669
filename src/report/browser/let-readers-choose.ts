import type { drawCharts } from '../charts/to-svg.ts';
import { NARROW, WIDE } from '../page/draw-twice.ts';
import { figure } from '../page/figure.ts';
import type { PictureData } from '../page/picture-data.ts';
import { type Choice, PICTURES, pictureId } from '../page/pictures.ts';
import { letReadersPoint } from './let-readers-point.ts';

/**
 * Shows the choice of room, option and week, and draws again the pictures that follow what was
 * changed, by the same functions that drew them first.
 *
 * @param unpack  gives the hours; called at the first change
 * @param first   what the page shows as it is
 * @param bought  number of the plan with the purchase, which some pictures show besides; -1 for none
 */
export function letReadersChoose(
  unpack: () => PictureData,
  first: Choice,
  bought: number,
  draw: typeof drawCharts,
): void {
  const form = document.getElementById('choices');
  const told = document.getElementById('choices-told');
  if (form === null || told === null) return;
  let data: PictureData | null = null;
  let choice = first;
  let turn = 0;
  const changed = new Set<keyof Choice>(); // since all was drawn last
  form.hidden = false;
  for (const key of ['room', 'plan', 'week'] as const) {
    const select = document.getElementById(`choice-${key}`) as HTMLSelectElement;
    select.value = String(first[key]); // some browsers keep what was chosen before a reload
    select.addEventListener('change', () => {
      choice = { ...choice, [key]: Number(select.value) };
      changed.add(key);
      drawAgain().catch(() => {
        told.textContent = 'The pictures could not be drawn; they are those of before.';
      });
    });
  }

  async function drawAgain(): Promise<void> {
    const mine = ++turn;
    told!.textContent = 'Drawing …';
    data ??= unpack();
    const own = data;
    const follow = PICTURES.filter(({ follows }) => follows.some((key) => changed.has(key)));
    const charts = follow.flatMap((picture) => {
      const id = pictureId(picture);
      const drawnWith = (shown: Choice, of: string) => ({
        id: of,
        wide: picture.draw(own, shown, WIDE),
        narrow: picture.draw(own, shown, NARROW),
      });
      const besides = document.getElementById(`${id}-with`) !== null;
      return [
        drawnWith(choice, id),
        ...(besides ? [drawnWith({ ...choice, plan: bought }, `${id}-with`)] : []),
      ];
    });
    const drawn = await draw(
      charts.flatMap(({ id, wide, narrow }) => [
        { id: `${id}-wide`, chart: wide },
        { id: `${id}-narrow`, chart: narrow },
      ]),
    );
    if (mine !== turn) return; // the reader has chosen on meanwhile
    changed.clear();
    charts.forEach(({ id, wide: chart }, k) => {
      const twice = { id, chart, wide: drawn[2 * k]!, narrow: drawn[2 * k + 1]! };
      replace(document.getElementById(id), figure(twice).markup);
    });
    told!.textContent = `${charts.length} pictures drawn again.`;
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
