/** Something about a log that a reader should know before trusting what is made of it. */
export interface LogWarning {
  readonly id:
    | 'short'
    | 'stuck'
    | 'silent'
    | 'gaps'
    | 'moved'
    | 'swapped'
    | 'humidity-ceiling'
    | 'above-outdoors'
    | 'below-outdoors'
    | 'unseen-people';
  readonly text: string;
}
