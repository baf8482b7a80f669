/** How many values a scenario states, its plans, names and files left aside. */
export function writtenValues(raw: unknown): number {
  if (typeof raw !== 'object' || raw === null) return 0;
  const { plans, title, weather, invented, doubts, ...home } = raw as Record<string, unknown>;
  return leaves(home);
}

function leaves(value: unknown): number {
  if (typeof value !== 'object' || value === null) return 1;
  return Object.values(value).reduce<number>((sum, inner) => sum + leaves(inner), 0);
}
