import type {ReaderRule} from '../rules/rules.ts'
import {type Place, type Problem, wholeFile} from '../schema/problem.ts'
import {buildSchema} from '../schema/schema.ts'
import {asScalar} from './trial.ts'

const largestFile = 1_000_000

/** Ten thousand pieces of stock, two lines each, and as much again as any build has besides. */
export const mostFrontLines = 21_000

/** The text between the two `---` lines and what follows, lines kept in place. */
interface FrontMatter {
  /** The YAML, without its fences. */
  yaml: string
  /** The line of the file on which the YAML starts. */
  firstLine: number
  body: string
  /** The line of the file on which the body starts. */
  bodyLine: number
}

/** Drop a byte-order mark and make every line end `\n`; no line or column moves. */
export const plainLines = (text: string): string => text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n')

/**
 * Split a build file (plain lines) at its fences.
 * Reports whatever is no build file: binary, too large, no fence, another language's fence, no end.
 */
export function splitFrontMatter(text: string): {front?: FrontMatter; problems: Problem<ReaderRule>[]} {
  const refuse = (rule: ReaderRule, message: string, place: Partial<Place> = {}) => ({
    problems: [
      {
        rule,
        severity: 'error',
        line: 1,
        column: 1,
        endLine: 1,
        endColumn: 1,
        ...place,
        message,
      } satisfies Problem,
    ],
  })
  if (text.length > largestFile)
    return refuse(
      'file-too-large',
      `this file has ${Math.round(text.length / 1e5) / 10} million characters; a build file has at most one million. Keep pictures and recordings in files of their own`,
    )
  if (/[\0\x01-\x08\x0e-\x1f\uFFFD]/.test(text.slice(0, 4096)) || text.includes('\0'))
    return refuse('not-text', 'this is not plain text; a build file is a Markdown file saved as UTF-8 text')
  const lines = text.split('\n')
  const first = lines[0] ?? ''
  if (!first.startsWith('---'))
    return refuse(
      'front-matter-missing',
      'the dimensions are missing: the first line must be ---, then lines such as "title: Needle box", then --- again',
    )
  const end = {endColumn: first.length + 1}
  if (!/^---[ \t]*$/.test(first)) {
    const word = first.slice(3).trim()
    return refuse(
      'front-matter-fence',
      /^[a-z]+$/i.test(word) && word.toLowerCase() !== 'yaml'
        ? `front matter in "${word}" is not read, and never run; the first line must be --- alone, and the dimensions below it YAML`
        : 'the first line must be --- alone',
      end,
    )
  }
  const close = lines.findIndex((line, i) => i > 0 && /^---[ \t]*$/.test(line))
  if (close < 0)
    return refuse(
      'front-matter-unclosed',
      'the line --- that ends the dimensions is missing; put it before the prose',
      end,
    )
  if (close > mostFrontLines)
    return refuse(
      'file-too-large',
      'up to here there are more than twenty-one thousand lines of dimensions, so none is read; take most of them out',
      {line: mostFrontLines + 1, endLine: mostFrontLines + 1, endColumn: lines[mostFrontLines]!.length + 1},
    )
  return {
    front: {
      yaml: lines.slice(1, close).join('\n'),
      firstLine: 2,
      body: lines.slice(close + 1).join('\n'),
      bodyLine: close + 2,
    },
    problems: [],
  }
}

/** A title that starts with # is a remark to YAML. */
export function titleInRemark(text: string, key: Place | undefined): Problem<ReaderRule> | undefined {
  const line = key && text.split('\n')[key.line - 1]
  const [, before = '', title = ''] = /^(title:\s+)(#\S.*?)\s*$/.exec(line ?? '') ?? []
  if (!key || !title) return undefined
  const quoted = JSON.stringify(title)
  return {
    rule: 'title-missing',
    severity: 'error',
    line: key.line,
    column: before.length + 1,
    endLine: key.line,
    endColumn: before.length + title.length + 1,
    message: `the title is a remark, since a # starts one; ${quoted} would do`,
    expected: [quoted],
    sure: true,
  }
}

/** Ask for a title below the first fence; the name of the file is one that would do. */
export function titleMissing(slug: string): Problem<ReaderRule> {
  const words = slug.replaceAll('-', ' ').trim()
  const title = `title: ${asScalar(words.charAt(0).toUpperCase() + words.slice(1) || 'Needle box', false)}`
  return {
    rule: 'title-missing',
    severity: 'error',
    ...wholeFile,
    endColumn: 4,
    message: `the title is missing: add a line such as ${title}`,
    expected: [`---\n${title}`],
  }
}

/** Find a second block of dimensions right after the first: keys that a build knows, then another fence. */
export function secondDocument(body: string, bodyLine: number): Problem<ReaderRule> | undefined {
  const lines = body.split('\n')
  const start = lines.findIndex((line) => line.trim() !== '')
  const end = lines.findIndex((line, i) => i > start && /^---[ \t]*$/.test(line))
  const key = /^([a-z-]+):(\s|$)/.exec(lines[start] ?? '')?.[1]
  if (start < 0 || end < 0 || !key || !Object.hasOwn(buildSchema.fields, key)) return undefined
  if (lines.slice(start, end).some((line) => line.trim() === '')) return undefined
  const line = bodyLine + start
  return {
    rule: 'two-documents',
    severity: 'error',
    line,
    column: 1,
    endLine: line,
    endColumn: key.length + 1,
    message:
      'a second block of dimensions begins here, and only the first is read; move its keys into the first block',
  }
}
