import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';

/** What a service of this machine does with a request. */
export type Answer = (request: IncomingMessage, response: ServerResponse) => void;

/** A service on this machine alone, what it was asked, and how to end it. */
export async function loopback(answer: Answer) {
  const asked: string[] = [];
  const server = createServer((request, response) => {
    asked.push(request.url ?? '');
    answer(request, response);
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${port}`,
    asked,
    end: () =>
      new Promise<void>((done) => {
        server.closeAllConnections();
        server.close(() => done());
      }),
  };
}

/** Answers with a text. */
export const says =
  (text: string, type: string, status = 200): Answer =>
  (_, response) => {
    response.writeHead(status, { 'content-type': type }).end(text);
  };
