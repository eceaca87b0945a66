import { createServer } from 'node:http';
import { readFileSync, statSync } from 'node:fs';
import { extname, join, normalize } from 'node:path';
import { gzipSync } from 'node:zlib';

// Astro's preview server leaves out the built headers file, and the headers are part of what is tested. So:
// our own, small.

/**
 * An address carries a calculator's numbers, a list of readings among them: Node's own limit of 16 kB is too
 * tight for the longest.
 */
const longestHead = 65_536;

const types = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.xml': 'application/xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
  '.pdf': 'application/pdf',
};

/** Reads a `_headers` file: a path pattern at the margin, then its header lines indented under it. */
export function readHeaderRules(text) {
  const rules = [];
  for (const line of text.split('\n')) {
    if (line.startsWith('/')) rules.push({ pattern: line.trim(), headers: {} });
    const header = /^\s+([\w-]+):\s*(.+)$/.exec(line);
    if (header) rules.at(-1).headers[header[1]] = header[2].trim();
  }
  return rules;
}

const matches = (pattern, path) =>
  pattern.endsWith('*') ? path.startsWith(pattern.slice(0, -1)) : path === pattern;
const isFile = (file) => statSync(file, { throwIfNoEntry: false })?.isFile() ?? false;

/**
 * Finds the file for an address: itself, or its folder's index. Hidden files and ways out of the folder find
 * nothing.
 */
function fileFor(folder, path) {
  if (path.includes('\0') || path.split('/').some((part) => part.startsWith('.'))) return undefined;
  const file = join(folder, normalize(path));
  return path.endsWith('/') ? [join(file, 'index.html')].find(isFile) : [file].find(isFile);
}

/**
 * Serves a built folder as a static host would. Resolves to the server once it listens; port 0 takes any free
 * port.
 */
export function serve(folder, port = 0) {
  const rules = isFile(join(folder, '_headers'))
    ? readHeaderRules(readFileSync(join(folder, '_headers'), 'utf8'))
    : [];
  const server = createServer({ maxHeaderSize: longestHead }, (request, response) => {
    let path;
    try {
      path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
    } catch {
      return response.writeHead(400).end();
    }
    const file = fileFor(folder, path);
    if (!file && fileFor(folder, `${path}/`))
      return response.writeHead(301, { location: encodeURI(`${path}/`).replace(/^\/+/, '/') }).end();
    const shown = file ?? join(folder, '404.html');
    const type = types[extname(shown)] ?? 'application/octet-stream';
    const headers = Object.assign(
      { 'Content-Type': type, Vary: 'Accept-Encoding' },
      ...rules.filter(({ pattern }) => matches(pattern, path)).map((rule) => rule.headers),
    );
    const plain = readFileSync(shown);
    const isText =
      /text|json|xml|svg/.test(type) && /\bgzip\b/.test(request.headers['accept-encoding'] ?? '');
    const body = isText ? gzipSync(plain) : plain;
    if (isText) headers['Content-Encoding'] = 'gzip';
    headers['Content-Length'] = body.length;
    response.writeHead(file ? 200 : 404, headers).end(request.method === 'HEAD' ? undefined : body);
  });
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, 'localhost', () => resolve(server));
  });
}
