/** The part of the odex package (Gragg-Bulirsch-Stoer extrapolation) that tests integrate with. */
declare class Solver {
  constructor(equations: number);
  absoluteTolerance: number;
  relativeTolerance: number;
  initialStepSize: number;
  maxSteps: number;
  solve(
    rates: (x: number, y: number[]) => number[],
    from: number,
    start: number[],
    to: number,
  ): { readonly y: number[]; readonly outcome: number; readonly nEval: number };
}
declare const odex: { Solver: typeof Solver };

export { odex as default };
