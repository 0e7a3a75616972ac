import type {Element, ElementContent, Nodes, Properties} from 'hast'
import {toHtml as asTheLibrary} from 'hast-util-to-html'
import {h, s} from 'hastscript'
import {expect, test} from 'vitest'
import {toHtml} from '../../plugins/drawings/writers/html.ts'
import fc from '../support/properties.ts'

const tags = [
  'p',
  'svg',
  'g',
  'path',
  'title',
  'desc',
  'a',
  'br',
  'img',
  'IMG',
  'td',
  'template',
  'style',
  'input',
]
const properties = [
  'className',
  'id',
  'hidden',
  'checked',
  'download',
  'viewBox',
  'strokeDashArray',
  'srcSet',
]
const others = [
  'ariaLabelledBy',
  'dataFootnoteRef',
  'dateTime',
  'colSpan',
  'accept',
  'unknownThing',
  'xLinkHref',
]
const text = fc.string({unit: fc.constantFrom(...'ab &<>"\'`\0\u00a0½é')})
const value = fc.oneof(
  text,
  fc.constantFrom('', 'hidden', 'download', true, false, null, undefined, 0, 1.5, Number.NaN),
  fc.array(fc.oneof(fc.constantFrom('one', "t'w&o"), fc.integer({min: 0, max: 9})), {maxLength: 3}),
)

const {tree} = fc.letrec<{tree: ElementContent}>((tie) => ({
  tree: fc.oneof(
    {depthSize: 'small'},
    text.map((one): ElementContent => ({type: 'text', value: one})),
    text.map((one): ElementContent => ({type: 'raw', value: one}) as unknown as ElementContent),
    fc
      .record({
        tagName: fc.constantFrom(...tags),
        properties: fc.dictionary(fc.constantFrom(...properties, ...others), value, {maxKeys: 4}),
        children: fc.array(tie('tree'), {maxLength: 4}),
      })
      .map(
        (one): Element => ({
          type: 'element',
          ...one,
          properties: one.properties as Properties,
          ...(one.tagName === 'template' && {content: {type: 'root', children: one.children}, children: []}),
        }),
      ),
  ),
}))

// Checked against hast-util-to-html, a general-purpose library.
test('trees are written as the library writes them, to the byte', () => {
  fc.assert(
    fc.property(
      tree,
      fc.constantFrom('html' as const, 'svg' as const),
      fc.record({closeEmptyElements: fc.boolean(), allowDangerousHtml: fc.boolean()}),
      (node, space, options) => {
        expect(toHtml(node, {space, ...options})).toBe(asTheLibrary(node as Nodes, {space, ...options}))
      },
    ),
    {numRuns: 300},
  )
})

test('a list of nodes, and a whole document', () => {
  const nodes = [h('p', {hidden: true}, 'a < b'), s('svg', {viewBox: '0 0 1 1'}, s('path', {d: 'M0 0'}))]
  expect(toHtml(nodes)).toBe(asTheLibrary(nodes))
  const page: Nodes = {type: 'root', children: [{type: 'doctype'}, h('html', [h('template', 'in it')])]}
  expect(toHtml(page)).toBe(asTheLibrary(page))
})

test('a node that is none of a page is a fault', () => {
  expect(() => toHtml({type: 'computed'} as unknown as Nodes)).toThrow('computed')
})
