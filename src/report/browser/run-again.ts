import type { LivingAnswer, LivingRequest } from '../../living/messages.ts';

/** A worker that runs a home, one request at a time. */
export interface Runner {
  /** Asks for a run; what waits behind the one in flight gives way to what is asked last. */
  readonly ask: (request: LivingRequest, then: (answer: LivingAnswer) => void) => void;
}

/** @param engine  address of the worker's script; setup: what it runs, packed */
export function startRunner(engine: string, setup: string): Runner {
  const worker = new Worker(engine);
  let flying: ((answer: LivingAnswer) => void) | null = null;
  let waiting: Parameters<Runner['ask']> | null = null;
  let count = 0;
  worker.postMessage({ setup });
  worker.addEventListener('error', () => {
    flying?.({ problems: ['the engine could not be started in this browser'] });
  });
  worker.addEventListener('message', ({ data }: MessageEvent<{ answer: LivingAnswer }>) => {
    const done = flying;
    flying = null;
    if (waiting !== null) {
      const [request, then] = waiting;
      waiting = null;
      send(request, then);
    }
    done?.(data.answer);
  });

  function send(request: LivingRequest, then: (answer: LivingAnswer) => void): void {
    flying = then;
    worker.postMessage({ id: ++count, request });
  }

  return {
    ask: (request, then) => {
      if (flying === null) send(request, then);
      else waiting = [request, then];
    },
  };
}
