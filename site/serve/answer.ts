import {createReadStream} from 'node:fs'
import type {IncomingMessage, ServerResponse} from 'node:http'
import {extname} from 'node:path'
import {pipeline} from 'node:stream'
import {policy} from '../layouts/policy.ts'
import {byteRange} from './byte-range.ts'
import {fileFor} from './file-for.ts'
import {mediaTypes} from './media-types.ts'

/** What a site is served from. */
export interface Served {
  folder: string
  prefix: string
}

const always = {
  'Content-Security-Policy': policy,
  'Cache-Control': 'no-store',
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
}

/** Answer a request from the site's folder, its 404 page where there is no such file. */
export async function answer({folder, prefix}: Served, request: IncomingMessage, response: ServerResponse) {
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, {...always, Allow: 'GET, HEAD'}).end()
    return
  }
  const path = (request.url ?? '/').split(/[?#]/)[0]!
  const found = await fileFor(folder, prefix, path)
  if (found && 'to' in found) {
    response.writeHead(301, {...always, Location: found.to}).end()
  } else if (found) {
    send(request, response, found.file, found.bytes, 200)
  } else {
    const missing = await fileFor(folder, prefix, `${prefix}404.html`)
    if (missing && 'file' in missing) send(request, response, missing.file, missing.bytes, 404)
    else response.writeHead(404, always).end()
  }
}

function send(
  request: IncomingMessage,
  response: ServerResponse,
  file: string,
  bytes: number,
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
