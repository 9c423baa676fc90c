import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { extname, join, sep } from 'node:path';
import type { Context as HonoContext } from 'hono';
import { problem } from '../core/problem.ts';
import { answerProblems } from './answer.ts';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.webp': 'image/webp',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.ttf': 'font/ttf',
  '.wasm': 'application/wasm',
  '.txt': 'text/plain; charset=utf-8',
};
/** The build gives such a file a new name whenever its content changes. */
const HASHED = /^\/assets\/.+-[\w-]{8,}\.\w+$/;
const A_YEAR = 'public, max-age=31536000, immutable';

function listFiles(folder: string): ReadonlyMap<string, string> {
  if (!existsSync(folder)) return new Map();
  const names = readdirSync(folder, { recursive: true, encoding: 'utf8' });
  const files = names.filter((name) => statSync(join(folder, name)).isFile());
  return new Map(files.map((name) => [`/${name.split(sep).join('/')}`, join(folder, name)]));
}

/**
 * The built pages. Only names that were in the folder at the start are served, so that no path leads out of it.
 * A path of no file is a page of the application: it gets index.html and finds its own way.
 */
export function serveWebFiles(folder: string): (http: HonoContext) => Response {
  const files = listFiles(folder);
  return (http) => {
    const path = http.req.path;
    const isPage = extname(path) === '';
    const file = files.get(path) ?? (isPage ? files.get('/index.html') : undefined);
    if (file === undefined) {
      const code = files.size === 0 ? 'pages-not-built' : 'page-missing';
      return answerProblems([problem(code, path)], 400);
    }
    const type = TYPES[extname(file)] ?? 'application/octet-stream';
    const cache = HASHED.test(path) ? A_YEAR : 'no-cache';
    return new Response(readFileSync(file), { headers: { 'content-type': type, 'cache-control': cache } });
  };
}
