import {createReadStream} from 'node:fs'
import {realpath, stat} from 'node:fs/promises'
import type {IncomingMessage, ServerResponse} from 'node:http'
import {extname, join, sep} from 'node:path'
import {pipeline} from 'node:stream'
import {policy} from '../layouts/head.ts'

/** What a site is served from. */
interface Served {
  folder: string
  prefix: string
  /** Goes with each answer, for a page to tell later what it was loaded from. */
  state?: string
}

export const always = {
  'Content-Security-Policy': policy,
  'Cache-Control': 'no-store',
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
}

/** Answer a request from the site's folder, its 404 page where there is no such file. */
export async function answer(
  {folder, prefix, state}: Served,
  request: IncomingMessage,
  response: ServerResponse,
) {
  if (state) response.setHeader('Server-Timing', `state;desc="${state}"`)
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, {...always, Allow: 'GET, HEAD'}).end()
    return
  }
  const path = (request.url ?? '/').split(/[?#]/)[0]!
  const found = await fileFor(folder, prefix, path)
  if (found && 'to' in found) {
    response.writeHead(301, {...always, Location: found.to}).end()
  } else if (found) {
    send(request, response, found, 200)
  } else {
    const missing = await fileFor(folder, prefix, `${prefix}404.html`)
    if (missing && 'file' in missing) send(request, response, missing, 404)
    else response.writeHead(404, always).end()
  }
}

function send(
  request: IncomingMessage,
  response: ServerResponse,
  {file, bytes}: FoundFile,
  status: number,
): void {
  const range = status === 200 ? byteRange(request.headers.range, bytes) : undefined
  if (range === 'none') {
    response.writeHead(416, {...always, 'Content-Range': `bytes */${bytes}`}).end()
    return
  }
  const [from, to] = range ?? [0, bytes - 1]
  response.writeHead(range ? 206 : status, {
    ...always,
    'Content-Type': mediaTypes[extname(file).slice(1).toLowerCase()] ?? 'application/octet-stream',
    'Content-Length': bytes === 0 ? 0 : to - from + 1,
    'Accept-Ranges': 'bytes',
    ...(range ? {'Content-Range': `bytes ${from}-${to}/${bytes}`} : {}),
  })
  if (request.method === 'HEAD' || bytes === 0) response.end()
  else pipeline(createReadStream(file, {start: from, end: to}), response, () => {})
}

/** A file to answer with. */
interface FoundFile {
  file: string
  bytes: number
}

/**
 * Find what `folder` (absolute, resolved) holds for the path of a request, `prefix` taken off. A folder is
 * answered by its index.html, and one asked for without a slash at its end by the address to go to instead.
 * Nothing outside the folder is found.
 */
export async function fileFor(
  folder: string,
  prefix: string,
  path: string,
): Promise<FoundFile | {to: string} | undefined> {
  const inside = decoded(path)
  if (inside === undefined || /\0|\\|\/\//.test(inside)) return undefined
  if (`${inside}/` === prefix) return {to: prefix}
  if (!inside.startsWith(prefix)) return undefined
  const asked = join(folder, inside.slice(prefix.length), inside.endsWith('/') ? 'index.html' : '')
  const file = await realpath(asked).catch(() => undefined)
  if (!file || (file !== folder && !file.startsWith(folder + sep))) return undefined
  const kind = await stat(file)
  if (kind.isDirectory()) return inside.endsWith('/') ? undefined : {to: `${path}/`}
  return {file, bytes: kind.size}
}

/** Read an address as it was asked for; undefined where it is none. */
export function decoded(path: string): string | undefined {
  try {
    return decodeURIComponent(path)
  } catch {
    return undefined
  }
}

/**
 * Read a Range header for a file of `bytes`: from and to, both included. Undefined where there is none or it
 * asks for several; 'none' where it asks for what the file does not have. Source: RFC 9110, section 14.
 */
export function byteRange(header: string | undefined, bytes: number): [number, number] | 'none' | undefined {
  const asked = /^bytes=(\d*)-(\d*)$/.exec(header ?? '')
  if (!asked || (asked[1] === '' && asked[2] === '')) return undefined
  const last = bytes - 1
  const [from, to] =
    asked[1] === ''
      ? [Math.max(0, bytes - Number(asked[2])), last]
      : [Number(asked[1]), asked[2] === '' ? last : Math.min(Number(asked[2]), last)]
  return from > last || from > to ? 'none' : [from, to]
}

/** The kinds of file that a site holds, by the ending of the name. */
const mediaTypes: Readonly<Record<string, string>> = {
  html: 'text/html; charset=utf-8',
  css: 'text/css; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  json: 'application/json; charset=utf-8',
  md: 'text/markdown; charset=utf-8',
  txt: 'text/plain; charset=utf-8',
  csv: 'text/csv; charset=utf-8',
  xml: 'application/xml; charset=utf-8',
  webmanifest: 'application/manifest+json',
  svg: 'image/svg+xml',
  png: 'image/png',
  jpeg: 'image/jpeg',
  jpg: 'image/jpeg',
  webp: 'image/webp',
  avif: 'image/avif',
  gif: 'image/gif',
  ico: 'image/x-icon',
  mp3: 'audio/mpeg',
  m4a: 'audio/mp4',
  ogg: 'audio/ogg',
  oga: 'audio/ogg',
  opus: 'audio/ogg',
  wav: 'audio/wav',
  flac: 'audio/flac',
  mp4: 'video/mp4',
  webm: 'video/webm',
  pdf: 'application/pdf',
  dxf: 'image/vnd.dxf',
  woff2: 'font/woff2',
}
