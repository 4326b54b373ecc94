// A plain file server on this machine alone, under a path of its own, as the site may be put anywhere.
import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize } from 'node:path';
import { createGzip } from 'node:zlib';

const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
};

/** Serves a folder; gives the address it stands under and how to end it. */
export async function serve(folder, under = '/some/place/') {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url, 'http://127.0.0.1');
    const path = join(folder, normalize(decodeURIComponent(pathname.slice(under.length - 1))));
    const found =
      pathname.startsWith(under) && path.startsWith(folder) && existsSync(path) && statSync(path).isFile();
    if (!found) {
      response.writeHead(404).end();
      return;
    }
    const type = TYPES[extname(path)];
    // Compressed, as any host of static pages does it.
    const gzip = type !== undefined && /gzip/.test(request.headers['accept-encoding'] ?? '');
    response.writeHead(200, {
      'content-type': type ?? 'application/octet-stream',
      ...(gzip && { 'content-encoding': 'gzip' }),
    });
    const file = createReadStream(path);
    (gzip ? file.pipe(createGzip()) : file).pipe(response);
  });
  await new Promise((listening) => server.listen(0, '127.0.0.1', listening));
  return {
    address: `http://127.0.0.1:${server.address().port}${under}`,
    close: () => server.close(),
  };
}
