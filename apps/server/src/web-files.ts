import { readdirSync, readFileSync } from 'node:fs'
import { extname, join, relative, sep } from 'node:path'
import type { Handler } from 'hono'

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.wasm': 'application/wasm',
  '.txt': 'text/plain; charset=utf-8',
}

/** The build puts a hash of the content into these names, so what they name never changes. */
const hashed = /^\/assets\/[^/]+-[\w-]{8,}\.\w+$/

/**
 * Gives the files of the built web app. Only names that a look into the folder finds are given, so no
 * address reaches outside it.
 *
 * @param folder  of the built app, with index.html in it
 */
export function webFiles(folder: string): Handler {
  return (context) => {
    const { path } = context.req
    const file = filesIn(folder).get(path === '/' ? '/index.html' : decoded(path))
    if (file === undefined) {
      return path === '/'
        ? context.text('The web app is not built yet. Run "npm run build", then reload this page.\n', 503)
        : context.text(`There is nothing at ${path.slice(0, 200)}.\n`, 404)
    }
    return context.body(new Uint8Array(readFileSync(file)), 200, {
      'content-type': types[extname(file)] ?? 'application/octet-stream',
      'cache-control': hashed.test(path) ? 'public, max-age=31536000, immutable' : 'no-cache',
    })
  }
}

/** Path of each file by its address; read anew each time, since the app may be rebuilt meanwhile. */
function filesIn(folder: string): ReadonlyMap<string, string> {
  try {
    const entries = readdirSync(folder, { withFileTypes: true, recursive: true })
    const files = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name))
    return new Map(files.map((file) => [`/${relative(folder, file).split(sep).join('/')}`, file]))
  } catch {
    return new Map()
  }
}

function decoded(path: string): string {
  try {
    return decodeURIComponent(path)
  } catch {
    return path
  }
}
