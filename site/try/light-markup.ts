// Elements and their markup for the page that tries a change: what `hastscript` and `hast-util-to-html` do, of which they
// take the places there, for what drawings and tables ask of them, at a twentieth of their size.
import type {Element, ElementContent} from 'hast'

type Value = string | number | boolean | undefined | null | readonly (string | number)[]
type Properties = Readonly<Record<string, Value>>
type Child = ElementContent | string | number | undefined | null | readonly Child[]

/** Make an element, as `h('p.note', {id}, 'words')`. */
export function h(selector: string, ...rest: (Properties | Child)[]): Element {
  const [first] = rest
  const isProperties = typeof first === 'object' && first && !Array.isArray(first) && !('type' in first)
  const [tagName = 'div', ...names] = selector.split(/(?=[.#])/)
  const className = names.filter((name) => name.startsWith('.')).map((name) => name.slice(1))
  const id = names.find((name) => name.startsWith('#'))?.slice(1)
  const own = isProperties ? (rest.shift() as Properties) : {}
  const all = {...(className.length > 0 && {className}), ...(id && {id}), ...own}
  const given = Object.entries(all).filter(([, value]) => value !== undefined && value !== null)
  const properties = Object.fromEntries(given) as Element['properties']
  return {type: 'element', tagName, properties, children: rest.flatMap((child) => nodes(child as Child))}
}

export const s = h

function nodes(child: Child): ElementContent[] {
  if (child === undefined || child === null) return []
  if (Array.isArray(child)) return (child as readonly Child[]).flatMap(nodes)
  return typeof child === 'object'
    ? [child as ElementContent]
    : [{type: 'text', value: String(child as string | number)}]
}

/** Names of attributes that are not those of their properties with hyphens. */
const irregular: Readonly<Record<string, string>> = {
  className: 'class',
  viewBox: 'viewBox',
  patternUnits: 'patternUnits',
  strokeLineCap: 'stroke-linecap',
  strokeLineJoin: 'stroke-linejoin',
  strokeDashArray: 'stroke-dasharray',
}

function attributeName(property: string): string {
  if (/^aria[A-Z]/.test(property)) return `aria-${property.slice(4).toLowerCase()}`
  return irregular[property] ?? property.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)
}

/** Write elements as markup. */
export function toHtml(tree: ElementContent | readonly ElementContent[]): string {
  if ('length' in tree) return tree.map((one) => toHtml(one)).join('')
  if (tree.type === 'text') return tree.value.replaceAll('&', '&#x26;').replaceAll('<', '&#x3C;')
  if (tree.type !== 'element') return ''
  const attributes = Object.entries(tree.properties).map(([name, value]) => attribute(name, value as Value))
  return `<${tree.tagName}${attributes.join('')}>${toHtml(tree.children)}</${tree.tagName}>`
}

function attribute(name: string, value: Value): string {
  if (value === false) return ''
  if (value === true) return ` ${attributeName(name)}`
  const text = Array.isArray(value) ? value.join(' ') : String(value)
  return ` ${attributeName(name)}="${text.replaceAll('&', '&#x26;').replaceAll('"', '&#x22;')}"`
}
