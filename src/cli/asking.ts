/** Questions to a person at a terminal, one at a time. */
export interface Asking {
  /** Whether something is so. @throws Interrupted */
  confirm(question: string, initial: boolean): Promise<boolean>;
  /** A line of text. @param check  why a line will not do; null where it does. @throws Interrupted */
  line(question: string, initial: string, check: (text: string) => string | null): Promise<string>;
  /** One of several. @throws Interrupted */
  one(question: string, options: readonly AskedOption[], initial: string): Promise<string>;
  /** Any number of several. @throws Interrupted */
  several(
    question: string,
    options: readonly AskedOption[],
    initial: readonly string[],
  ): Promise<readonly string[]>;
}

/** One of the answers to choose from. */
export interface AskedOption {
  readonly value: string;
  readonly label: string;
  readonly hint?: string;
}

/** The person broke off at a question. */
export class Interrupted extends Error {
  constructor() {
    super('interrupted');
    this.name = 'Interrupted';
  }
}
