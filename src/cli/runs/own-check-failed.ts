/** The program found a fault of its own. The figures may already be printed; they are not to be trusted. */
export class OwnCheckFailed extends Error {
  constructor(message: string) {
    super(message);
    this.name = 'OwnCheckFailed';
  }
}
