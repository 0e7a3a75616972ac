import type {Emphasis, Link, PhrasingContent, Strong, Text} from 'mdast'

/** What may stand in a line of text: plain text, or any phrasing node. */
export type Inline = string | PhrasingContent

/** Turn plain texts among inline content into nodes. */
export function inline(content: readonly Inline[]): PhrasingContent[] {
  return content.map((one) => (typeof one === 'string' ? text(one) : one))
}

/** Write plain text; nothing in it is taken as Markdown or HTML. */
export function text(value: string): Text {
  return {type: 'text', value}
}

/** Write strong text. */
export function strong(...content: Inline[]): Strong {
  return {type: 'strong', children: inline(content)}
}

/** Write stressed text. */
export function emphasis(...content: Inline[]): Emphasis {
  return {type: 'emphasis', children: inline(content)}
}

/** Link to an address of the site from its root (`/woods/`), or to a part of the page (`#layout`). */
export function link(url: string, ...content: Inline[]): Link {
  return {type: 'link', url, children: inline(content)}
}
