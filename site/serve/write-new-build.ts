import {randomBytes, timingSafeEqual} from 'node:crypto'
import {lstat, mkdir, rm, writeFile} from 'node:fs/promises'
import type {IncomingMessage, ServerResponse} from 'node:http'
import {join} from 'node:path'
import {diskTrouble} from '../kit/disk-trouble.ts'
import type {WrittenAnswer} from '../try/new-build-path.ts'

/** A front matter has a few kilobytes. */
const mostBytes = 256 * 1024

/**
 * Answer what asks to write a build that was tried into `builds/` of the journal at `root`: as a new file, and nothing
 * else. Only a page of this server may ask: it is told a token, which no page from elsewhere can read, and what a browser
 * says of where a request comes from must be this server.
 */
export function newBuildWriter(
  root: string,
): (request: IncomingMessage, response: ServerResponse) => Promise<void> {
  const token = randomBytes(24).toString('hex')
  return async (request, response) => {
    const headers = {'Cache-Control': 'no-store', 'X-Content-Type-Options': 'nosniff'}
    const answer = (status: number, says: string) => {
      response.writeHead(status, {...headers, 'Content-Type': 'application/json; charset=utf-8'})
      response.end(JSON.stringify({says} satisfies WrittenAnswer))
    }
    if (!isFromHere(request)) answer(403, 'Only a page of this journal may write into it.')
    else if (request.method === 'GET')
      response.writeHead(200, {...headers, 'Content-Type': 'text/plain; charset=utf-8'}).end(token)
    else if (request.method !== 'POST') answer(405, 'A build is written by POST.')
    else if (!isToken(request.headers['x-token'], token)) answer(403, 'Load the page again, and write then.')
    else if (!/^application\/json\b/.test(request.headers['content-type'] ?? ''))
      answer(415, 'A build is sent as JSON.')
    else {
      const sent = await bodyOf(request)
      const asked = sent === undefined ? undefined : askedFor(sent)
      if (!asked) answer(400, 'This is no build that this page sends.')
      else answer(...(await write(root, asked)))
    }
  }
}

/** A browser says which page asks: one of another origin is none of ours. */
function isFromHere({headers, method}: IncomingMessage): boolean {
  const {host, origin} = headers
  const site = headers['sec-fetch-site']
  if (site !== undefined && site !== 'same-origin') return false
  return origin === undefined ? method === 'GET' || site !== undefined : origin === `http://${host}`
}

function isToken(given: string | string[] | undefined, token: string): boolean {
  const [a, b] = [Buffer.from(String(given)), Buffer.from(token)]
  return a.length === b.length && timingSafeEqual(a, b)
}

/**
 * Read a body; undefined where it is larger than a build. Such a one is read to its end, and not kept: who is cut off
 * while sending never hears the answer.
 */
async function bodyOf(request: IncomingMessage): Promise<string | undefined> {
  const parts: Buffer[] = []
  let bytes = 0
  for await (const part of request) {
    bytes += (part as Buffer).length
    if (bytes <= mostBytes) parts.push(part as Buffer)
  }
  return bytes > mostBytes ? undefined : Buffer.concat(parts).toString('utf8')
}

interface Asked {
  slug: string
  text: string
}

function askedFor(body: string): Asked | undefined {
  try {
    const {slug, text} = JSON.parse(body) as Record<string, unknown>
    const isSlug = typeof slug === 'string' && /^[a-z0-9-]{1,120}$/.test(slug) && slug !== 'readme'
    const isText = typeof text === 'string' && /^---\r?\n[\s\S]*\n---\r?\n?$/.test(text)
    return isSlug && isText ? {slug, text} : undefined
  } catch {
    return undefined
  }
}

/** Write a new file; what is there is never touched. */
async function write(root: string, {slug, text}: Asked): Promise<[status: number, says: string]> {
  const folder = join(root, 'builds')
  const isThere = (name: string) =>
    lstat(join(folder, name)).then(
      () => true,
      () => false,
    )
  const taken = (name: string): [number, string] => [
    409,
    `builds/${name} is there already; give it another name.`,
  ]
  for (const name of [`${slug}.md`, slug]) if (await isThere(name)) return taken(name)
  const file = join(folder, `${slug}.md`)
  try {
    await mkdir(folder, {recursive: true})
    await writeFile(file, text, {flag: 'wx'})
    return [201, `builds/${slug}.md is written. Its page is at /builds/${slug}/.`]
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return taken(`${slug}.md`)
    await rm(file, {force: true}).catch(() => {})
    return [500, `builds/${slug}.md is not written: ${diskTrouble(error, root, 'builds')}`]
  }
}
