import {cpSync, mkdirSync, readdirSync, readFileSync, writeFileSync} from 'node:fs'
import {join} from 'node:path'

/**
 * Write a journal of so many builds into a folder: the project's own, again and again under other names and titles, each
 * family apart. What is there once, boards of the rack, the first of each takes.
 */
export function writeManyBuilds(root: string, count: number): void {
  const to = join(root, 'builds')
  mkdirSync(to, {recursive: true})
  for (const name of ['journal.yaml', 'rack.yaml']) cpSync(join('builds', name), join(to, name))
  const kinds = readdirSync('builds', {withFileTypes: true}).flatMap((entry) => {
    if (entry.isDirectory()) return [{slug: entry.name, file: `${entry.name}/index.md`}]
    return entry.name.endsWith('.md') ? [{slug: entry.name.slice(0, -3), file: entry.name}] : []
  })
  for (let at = 0; at < count; at++) {
    const {slug, file} = kinds[at % kinds.length]!
    const round = Math.floor(at / kinds.length)
    const name = (of: string) => (round === 0 ? of : `${of}-${round}`)
    const inFolder = file.endsWith('/index.md')
    const text = readFileSync(join('builds', file), 'utf8')
    if (inFolder) cpSync(join('builds', slug), join(to, name(slug)), {recursive: true})
    writeFileSync(
      join(to, inFolder ? `${name(slug)}/index.md` : `${name(slug)}.md`),
      round === 0 ? text : renamed(text, {round, slugs: kinds.map((one) => one.slug), name}),
    )
  }
}

function renamed(
  text: string,
  {round, slugs, name}: {round: number; slugs: readonly string[]; name: (slug: string) => string},
): string {
  const own = text
    .replace(/^(title: .*)$/m, `$1 ${round}`)
    .replace(/^publish:.*\n/m, '')
    .replace(/^take:.*\n(?: .*\n|- .*\n)*/m, '')
  return slugs.reduce(
    (all, slug) =>
      all
        .replaceAll(`based-on: ${slug}\n`, `based-on: ${name(slug)}\n`)
        .replaceAll(`(${slug}.md`, `(${name(slug)}.md`),
    own,
  )
}
