import type {Element, ElementContent} from 'hast'
import {h} from 'hastscript'
import type {Problem} from '../../plugins/build-file/schema/problem.ts'
import type {SiteBuild, SiteData} from '../kit/site-data.ts'

/** While somebody writes: each problem under its own line of the file, the value it is about marked. */
export function whileWriting({problems, text, file}: SiteBuild): Element | undefined {
  if (problems.length === 0) return undefined
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\r|\n/)
  const numbers = [...new Set(problems.map(({line}) => line))].sort((a, b) => a - b)
  return h('section.while-writing', {ariaLabel: 'Problems of the file'}, [
    h('p', ['In ', h('code', file), ':']),
    h(
      'ol',
      numbers.map((number) => {
        const here = problems.filter(({line}) => line === number)
        return h('li', [
          h('code', [h('span.line-number', `${number} `), ...marked(lines[number - 1] ?? '', here[0]!)]),
          h('ul', here.map(told)),
        ])
      }),
    ),
  ])
}

/** Mark what a problem is about in its line; columns count from 1, and the end is exclusive. */
function marked(line: string, {column, line: first, endLine, endColumn}: Problem): (string | Element)[] {
  const end = endLine > first ? line.length : endColumn - 1
  const value = line.slice(column - 1, end)
  return value.trim() === '' ? [line] : [line.slice(0, column - 1), h('mark', value), line.slice(end)]
}

function told({rule, severity, message}: Problem): Element {
  return h(`li.${severity}`, [
    `${severity}: ${message} `,
    h('a', {href: `/rules/#${rule}`}, 'Why, and what to do'),
  ])
}

/** List, while somebody writes, the files of the journal that have no page, and why. */
export function unreadFiles(unread: SiteData['unread']): ElementContent[] {
  if (unread.length === 0) return []
  const items = unread.map(({file, message}) => h('li', [h('code', file), ` ${message}`]))
  return [h('section.unread', {ariaLabel: 'Files without a page'}, [h('ul', items)])]
}
