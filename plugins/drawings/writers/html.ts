import type {Element, Nodes, Properties} from 'hast'
import {find, html, svg} from 'property-information'

// What `hast-util-to-html` writes, to the byte, as a test holds: a page has ten thousand elements, and their attributes
// were looked up anew for each. Here each name is looked up once.

interface Options {
  /** What the tree is a part of; HTML unless it is said. */
  space?: 'html' | 'svg'
  /** Write an element of SVG without content as `<path />`, as XML has it. */
  closeEmptyElements?: boolean
  /** Write HTML that this project has written before as it is. */
  allowDangerousHtml?: boolean
}

/** Write a tree as HTML or SVG; every text and attribute is escaped. */
export function toHtml(tree: Nodes | readonly Nodes[], {space = 'html', ...options}: Options = {}): string {
  return 'type' in tree ? write(tree, space, options) : writeAll(tree, space, options)
}

type Space = 'html' | 'svg'
type Written = Omit<Options, 'space'>

function writeAll(nodes: readonly Nodes[], space: Space, options: Written): string {
  let all = ''
  for (const node of nodes) all += write(node, space, options)
  return all
}

function write(node: Nodes, space: Space, options: Written): string {
  if (node.type === 'element') return writeElement(node, space, options)
  if (node.type === 'text') return escapedText(node.value)
  if (node.type === 'root') return writeAll(node.children, space, options)
  if (node.type === 'doctype') return '<!doctype html>'
  if ((node.type as string) === 'raw') {
    const {value} = node as unknown as {value: string}
    return options.allowDangerousHtml ? value : escapedText(value)
  }
  throw new Error(`nothing is written of a node of type ${node.type}`)
}

/** Elements without an end. Source: HTML standard, 13.1.2, void elements. */
// biome-ignore format: words in lines
const voids = new Set([
  'area', 'base', 'br', 'col', 'embed', 'hr', 'img', 'input', 'link', 'meta', 'source', 'track', 'wbr',
])

/** What stands in these within SVG is HTML. Source: HTML standard, 13.2.6, HTML integration points. */
const htmlAgain = new Set(['desc', 'foreignObject', 'title'])

function writeElement(element: Element, space: Space, options: Written): string {
  const {tagName} = element
  const own = tagName === 'svg' ? 'svg' : space
  const start = `<${tagName}${attributes(element.properties, own)}`
  const inside = own === 'svg' && htmlAgain.has(tagName) ? 'html' : own
  const content = contentOf(element, inside, options)
  if (content === '') {
    if (space === 'svg' && options.closeEmptyElements) return `${start} />`
    if (space === 'html' && voids.has(tagName.toLowerCase())) return `${start}>`
  }
  return `${start}>${content}</${tagName}>`
}

function contentOf({tagName, children, content}: Element, space: Space, options: Written): string {
  if (tagName === 'template' && space === 'html') return content ? write(content, space, options) : ''
  if (tagName === 'script' || tagName === 'style')
    return children.map((one) => ('value' in one ? one.value : write(one, space, options))).join('')
  return writeAll(children, space, options)
}

/** How a property is written; kept, since there are few. */
interface Attribute {
  name: string
  /** It stands by itself, without a value; or also with one (`download`). */
  alone: 'always' | 'also' | 'never'
  between: ', ' | ' '
}

const known = {html: new Map<string, Attribute>(), svg: new Map<string, Attribute>()}

function attributeOf(property: string, space: Space): Attribute {
  const there = known[space].get(property)
  if (there) return there
  const {attribute, boolean, overloadedBoolean, commaSeparated} = find({html, svg}[space], property)
  const made: Attribute = {
    name: attribute.replace(/[\0\t\n\f\r "&'/<=>`]/g, reference),
    alone: overloadedBoolean ? 'also' : boolean ? 'always' : 'never',
    between: commaSeparated ? ', ' : ' ',
  }
  known[space].set(property, made)
  return made
}

type Value = Properties[string]

function attributes(properties: Properties, space: Space): string {
  let all = ''
  for (const property in properties) {
    const attribute = attributeOf(property, space)
    const value = asAsked(properties[property], attribute)
    if (value === null || value === undefined || value === false || Number.isNaN(value)) continue
    all += ` ${attribute.name}`
    if (value === true) continue
    const text = Array.isArray(value) ? value.join(attribute.between).trim() : String(value)
    all += `="${escapedValue(text)}"`
  }
  return all
}

/** Of what stands by itself any value but a text says whether it does. */
function asAsked(value: Value, {name, alone}: Attribute): Value {
  if (alone === 'never' || value === null || value === undefined) return value
  if (value === '') return alone === 'also'
  return typeof value === 'string' && value !== name ? value : Boolean(value)
}

const reference = (sign: string) => `&#x${sign.charCodeAt(0).toString(16).toUpperCase()};`

const escapedText = (text: string): string => (/[<&]/.test(text) ? text.replace(/[<&]/g, reference) : text)

const escapedValue = (text: string): string =>
  /["&'`\0]/.test(text) ? text.replace(/["&'`\0]/g, reference) : text
