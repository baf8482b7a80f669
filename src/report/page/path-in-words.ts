/**
 * A pointer into a scenario as words: names as they are, numbers of a list by what stands there.
 *
 * @param pointer  RFC 6901
 * @param raw      the scenario, as plain values
 * @example pathInWords('/household/activities/1/water', raw) // 'household, bath, water'
 */
export function pathInWords(pointer: string, raw: unknown): string {
  const steps = pointer
    .split('/')
    .slice(1)
    .map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));
  let at = raw;
  const words = steps.map((step) => {
    const inList = Array.isArray(at);
    at = typeof at === 'object' && at !== null ? (at as Record<string, unknown>)[step] : undefined;
    return inList ? itemName(at, step) : step;
  });
  // What all of a section have in common says nothing.
  return words.filter((word, k) => k > 0 || words.length < 3 || !SECTIONS.has(word)).join(', ');
}

function itemName(item: unknown, step: string): string {
  const known = typeof item === 'object' && item !== null ? (item as Record<string, unknown>) : {};
  const name = known['name'] ?? known['what'] ?? known['who'] ?? known['between'];
  if (Array.isArray(name)) return name.join(' and ');
  if (typeof name === 'string') return name;
  const deed = DEEDS.find((one) => typeof known[one] === 'string');
  return deed === undefined ? `number ${Number(step) + 1}` : `${deed} ${known[deed]}`;
}

/** What a rule has somebody do; a message is its own words. */
const DEEDS = ['open', 'close', 'run', 'stop'];
const SECTIONS: ReadonlySet<string> = new Set(['home', 'household']);
