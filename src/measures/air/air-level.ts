/** Levels of species, by name, such as `PlanFigures` has them. */
interface Air {
  readonly air: readonly { readonly name: string; readonly value: number }[];
}

/** Level of a species that people live in; undefined where it is not told. [species unit] */
export const airLevel = ({ air }: Air, name: string): number | undefined =>
  air.find((level) => level.name === name)?.value;
