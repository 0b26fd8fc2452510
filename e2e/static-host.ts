import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

export interface StaticHost {
  readonly address: string;
  /** Every path that was asked for, in order. */
  readonly asked: readonly string[];
  /** What browsers reported against the policy. */
  readonly reported: readonly string[];
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

/** Where browsers are told to report to. */
const REPORTS = '/reported-against-the-policy';

/**
 * The simplest host there is: the files of a folder under a path, nothing rewritten, no header but the kind of file. With a
 * `policy` every file comes with that as well, and whatever breaks it is reported here.
 */
export async function staticHost(path: string, folder = 'dist', policy?: string): Promise<StaticHost> {
  const asked: string[] = [];
  const reported: string[] = [];
  const server = createServer((request, response) => {
    const wanted = new URL(request.url ?? '/', 'http://here').pathname;
    if (wanted === REPORTS) {
      request.on('data', (part) => reported.push(String(part))).on('end', () => response.writeHead(204).end());
      return;
    }
    asked.push(wanted);
    const inside = normalize(wanted.startsWith(path) ? wanted.slice(path.length) : '..');
    const file = join(folder, inside === '.' || inside === '' ? 'index.html' : inside);
    if (inside.startsWith('..') || !existsSync(file) || !statSync(file).isFile()) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, {
      'Content-Type': TYPES[extname(file)] ?? 'application/octet-stream',
      ...(policy && { 'Content-Security-Policy': `${policy}; report-uri ${REPORTS}` }),
    });
    createReadStream(file).pipe(response);
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}${path}`,
    asked,
    reported,
    stop: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}
