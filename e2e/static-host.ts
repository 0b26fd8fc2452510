import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

export interface StaticHost {
  readonly address: string;
  /** Takes the host off the network for good. */
  stop(): Promise<void>;
}

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.mjs': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
};

/** The simplest host there is: the files of a folder under a path, nothing rewritten, no header but the kind of file. */
export async function staticHost(path: string, folder = 'dist'): Promise<StaticHost> {
  const server = createServer((request, response) => {
    const wanted = new URL(request.url ?? '/', 'http://here').pathname;
    const inside = normalize(wanted.startsWith(path) ? wanted.slice(path.length) : '..');
    const file = join(folder, inside === '.' || inside === '' ? 'index.html' : inside);
    if (inside.startsWith('..') || !existsSync(file) || !statSync(file).isFile()) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { 'Content-Type': TYPES[extname(file)] ?? 'application/octet-stream' });
    createReadStream(file).pipe(response);
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}${path}`,
    stop: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}
