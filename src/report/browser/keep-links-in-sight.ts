/**
 * Brings a link of the contents wholly into sight when it gets the focus: on a phone they stand in one
 * line, which browsers push no further than until a part of the link is seen.
 */
export function keepLinksInSight(contents: HTMLElement): void {
  contents.addEventListener('focusin', ({ target }) => {
    (target as HTMLElement).scrollIntoView({ block: 'nearest', inline: 'nearest' });
  });
}
