/** A name of no more characters than that, its end given up for dots where it is longer. */
export function shortened(name: string, characters: number): string {
  const all = [...name];
  const most = Math.max(2, Math.floor(characters));
  return all.length <= most ? name : `${all.slice(0, most - 1).join('')}…`;
}
