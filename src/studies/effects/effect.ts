/** One thing that a plan changes for those who live with it, in words with figures and without. */
export interface Effect {
  readonly of: 'cold' | 'warm' | 'damp' | 'dry' | 'spots' | 'mould' | 'air';
  /** The figure that it goes by, where that is not the usual one of its kind. */
  readonly figure?: 'warmBy';
  readonly better: boolean;
  /** How much it matters beside other effects; 1 is clear to anybody. [-] */
  readonly weight: number;
  /**
   * How near its limit that is, for what is told first: 1 is beyond it often, and so it is where it
   * is left out; a large change of what is far below its limit matters less. [0 to 1]
   */
  readonly nearness?: number;
  /** Mould that would be seen by eye where there is none otherwise: told before all but people who freeze. */
  readonly seen?: true;
  /** "damper", where the figure stands beside it. */
  readonly word: string;
  /** "hotter rooms", where what is usually said of its kind in two words is not so. */
  readonly short?: string;
  /** "rooms are too damp 36 % of the time (was 17 %)" */
  readonly words: string;
}
