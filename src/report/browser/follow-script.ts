import { type Standing, standingBody } from '../served/standing.ts';

// What runs in a served page: it hears of changes of the home's files, and shows the page made of them.

const place = document.getElementById('standing')!;
const own = { page: Number(place.dataset['page']), edition: Number(place.dataset['edition']) };
let touched = false;
for (const kind of ['pointerdown', 'keydown']) {
  addEventListener(kind, () => {
    touched = true;
  });
}

const source = new EventSource('events');
source.addEventListener('message', ({ data }: MessageEvent<string>) => {
  const standing = JSON.parse(data) as Standing;
  if (standing.page !== own.page && !(touched && standing.pageOf === own.edition)) {
    return location.reload();
  }
  tell(standing);
  if (standing.page !== own.page) place.append(offer());
});
source.addEventListener('error', () => {
  tell({
    ...{ page: own.page, edition: own.edition, pageOf: own.edition },
    ...{ state: 'wrong', problems: [] },
    words:
      'The program that serves this page has ended or does not answer. What stands here is as it was last.',
  });
});

function tell(standing: Standing): void {
  place.className = `standing ${standing.state}`;
  const parsed = new DOMParser().parseFromString(standingBody(standing).markup, 'text/html');
  place.replaceChildren(...parsed.body.childNodes);
  const older = standing.edition !== standing.pageOf;
  document.querySelector('main')!.classList.toggle('older', older && standing.page > 0);
}

/** Whoever reads already is not torn from it by a fuller page of the same files. */
function offer(): HTMLElement {
  const button = document.createElement('button');
  button.type = 'button';
  button.textContent = 'Show all of it';
  button.addEventListener('click', () => location.reload());
  return button;
}
