import {existsSync, readdirSync, readFileSync, writeFileSync} from 'node:fs'
import remarkFrontmatter from 'remark-frontmatter'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import remarkStringify from 'remark-stringify'
import {unified} from 'unified'
import {VFile} from 'vfile'
import {describe, expect, it} from 'vitest'
import {remarkBuild} from '../plugins/remark-build.ts'

// A folder a case, named like a sentence: input.md, and what is expected of it, output.md and messages.txt.
// `UPDATE_FIXTURES=1 npx vitest run test/fixtures.test.ts` writes the expectations;
// read the difference before you keep it.
const folder = new URL('fixtures/', import.meta.url)
const isUpdating = process.env.UPDATE_FIXTURES === '1'

describe.each(readdirSync(folder).filter((name) => !name.startsWith('.')))('%s', (name) => {
  const at = (file: string) => new URL(`${encodeURIComponent(name)}/${file}`, folder)
  const file = new VFile({path: 'builds/needle-box.md', value: readFileSync(at('input.md'), 'utf8')})
  const output = String(
    unified()
      .use(remarkParse)
      .use(remarkFrontmatter)
      .use(remarkGfm)
      .use(remarkBuild)
      .use(remarkStringify, {bullet: '-'})
      .processSync(file),
  )
  const severity = new Map<boolean | undefined, string>([
    [true, 'stop'],
    [false, 'warning'],
    [undefined, 'remark'],
  ])
  const messages = file.messages.map(
    ({line, column, fatal, reason, ruleId}) =>
      `${line}:${column} ${severity.get(fatal ?? undefined)} ${reason} ${ruleId}\n`,
  )

  it.each([
    ['output.md', output],
    ['messages.txt', messages.join('')],
  ])('gives %s', (expectation, text) => {
    if (isUpdating) writeFileSync(at(expectation), text)
    expect(existsSync(at(expectation)), `${expectation} is missing in “${name}”`).toBe(true)
    expect(text).toBe(readFileSync(at(expectation), 'utf8'))
  })
})
