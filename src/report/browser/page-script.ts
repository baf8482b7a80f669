import type { HeldTrial } from '../page/held-trial.ts';
import { type PackedPictures, unpackPictures } from '../page/packed-pictures.ts';
import type { Choice } from '../page/pictures.ts';
import { keepLinksInSight } from './keep-links-in-sight.ts';
import { letReadersChoose } from './let-readers-choose.ts';
import { letReadersPoint } from './let-readers-point.ts';
import { letReadersTry } from './let-readers-try.ts';

// What runs in the page of a report. Without it the page is whole, but stands still.

const held = JSON.parse(document.getElementById('picture-data')!.textContent ?? '') as {
  packed: PackedPictures;
  choice: Choice;
  bought: number;
  trial: HeldTrial | null;
};

keepLinksInSight(document.querySelector('nav')!);
for (const figure of document.querySelectorAll<HTMLElement>('figure.picture')) {
  letReadersPoint(figure);
}
if (held.trial !== null) letReadersTry(held.trial);
letReadersChoose(() => unpackPictures(held.packed), held.choice, held.bought);
