/**
 * The steps of a JSON pointer such as "/home/rooms/front room/floor area": `~1` stands for a slash
 * and `~0` for a tilde, spaces stand as they are. Null where the text is not a pointer.
 *
 * Source: RFC 6901, sections 3 and 4.
 */
export function pointerSteps(pointer: string): string[] | null {
  if (!pointer.startsWith('/') || /~(?![01])/.test(pointer)) return null;
  return pointer
    .slice(1)
    .split('/')
    .map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));
}

/** The pointer with these steps. */
export function pointerOf(steps: readonly (string | number)[]): string {
  let pointer = '';
  for (const step of steps) {
    const text = String(step);
    pointer += SPECIAL.test(text)
      ? `/${text.replaceAll('~', '~0').replaceAll('/', '~1')}`
      : `/${text}`;
  }
  return pointer;
}

const SPECIAL = /[~/]/;
