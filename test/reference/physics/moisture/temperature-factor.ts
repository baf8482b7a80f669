/** The factor that a measured surface temperature betrays; NaN where inside equals outside. [-] */
export function temperatureFactor(surface: number, indoor: number, outdoor: number): number {
  return indoor === outdoor ? Number.NaN : (surface - outdoor) / (indoor - outdoor);
}
