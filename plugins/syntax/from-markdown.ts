import {directiveFromMarkdown} from 'mdast-util-directive'
import type {Extension} from 'mdast-util-from-markdown'
import './nodes.ts'

/** Make nodes (`leafDirective`, `valueReference`) of what build-syntax.ts recognises. */
export function buildFromMarkdown(): Extension[] {
  return [
    directiveFromMarkdown(),
    {
      enter: {
        valueReference(token) {
          this.enter({type: 'valueReference', value: ''}, token)
        },
      },
      exit: {
        valueReferencePath(token) {
          const node = this.stack.at(-1)
          if (node?.type === 'valueReference') node.value = this.sliceSerialize(token)
        },
        valueReference(token) {
          this.exit(token)
        },
      },
    },
  ]
}
