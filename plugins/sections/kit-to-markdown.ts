import type {Nodes, Parents, RootContent} from 'mdast'
import type {Handle, Options, State} from 'mdast-util-to-markdown'
import type {CaptionedTable, Drawing, Fact, Figures} from './kit-nodes.ts'

/**
 * Say how computed nodes read as Markdown (an extension for mdast-util-to-markdown, beside that for GFM):
 * a caption stands before its table, facts are a list, a fold is its summary and what it holds.
 */
export const kitToMarkdown: Options = {
  handlers: {
    captionedTable: blocks((node: CaptionedTable) => [
      {type: 'paragraph', children: [{type: 'strong', children: node.caption}]},
      ...node.children,
    ]),
    scrolling: blocks((node: Parents) => node.children as RootContent[]),
    facts: blocks((node: {children: Fact[]}) => [
      {
        type: 'list',
        spread: false,
        children: node.children.map(({children: [name, value]}) => ({
          type: 'listItem',
          spread: false,
          children: [
            {type: 'paragraph', children: [...name.children, {type: 'text', value: ': '}, ...value.children]},
          ],
        })),
      },
    ]),
    figures: blocks((node: Figures) => {
      const [summary, ...rest] = node.children as [{children: []}, ...RootContent[]]
      return [{type: 'paragraph', children: [{type: 'emphasis', children: summary.children}]}, ...rest]
    }),
    drawing: ((node: Drawing, _, state) => `[${state.safe(node.alt, {before: '[', after: ']'})}]`) as Handle,
    computedSection: blocks((node: Parents) => node.children as RootContent[]),
    computedValue: phrasing,
    fraction: phrasing,
    measure: phrasing,
    small: phrasing,
  } as Partial<Record<Nodes['type'], Handle>>,
}

function blocks<Node>(content: (node: Node) => RootContent[]): Handle {
  return (node: Node, _, state: State, info) =>
    state.containerFlow({type: 'root', children: content(node)}, {...info})
}

const phrasingOf: Handle = (node, _, state, info) => state.containerPhrasing(node, info)
function phrasing(...[node, parent, state, info]: Parameters<Handle>): string {
  return phrasingOf(node, parent, state, info)
}
