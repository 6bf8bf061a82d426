import { connect } from 'node:net';

/** What a server on this machine sends back for a request as it stands, which a tidy client would never send. */
export function askRaw(address: string, request: string): Promise<string> {
  const { hostname, port } = new URL(address);
  return new Promise((resolve, reject) => {
    const chunks: Buffer[] = [];
    const socket = connect(Number(port), hostname, () => socket.write(request));
    socket.on('data', (chunk: Buffer) => chunks.push(chunk));
    socket.on('error', reject);
    socket.on('close', () => resolve(Buffer.concat(chunks).toString('latin1')));
  });
}

/** The answer to one request for a path, `host` being the name that the server is asked by. */
export function ask(address: string, target: string, { method = 'GET', host = new URL(address).host } = {}) {
  return askRaw(address, `${method} ${target} HTTP/1.1\r\nHost: ${host}\r\nConnection: close\r\n\r\n`);
}

export const statusOf = (answer: string): number => Number(/^HTTP\/1\.1 (\d{3})/.exec(answer)?.[1]);
