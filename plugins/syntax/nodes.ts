import type {Literal} from 'mdast'
import {directiveFromMarkdown, directiveToMarkdown, type LeafDirective} from 'mdast-util-directive'
import type {Extension} from 'mdast-util-from-markdown'
import type {Handle, Options} from 'mdast-util-to-markdown'

/** `:value[path]` in a sentence; `value` is the path as written. */
interface ValueReference extends Literal {
  type: 'valueReference'
}

/** `:step[name]` in a sentence; `value` is the name as written. */
interface StepReference extends Literal {
  type: 'stepReference'
}

declare module 'mdast-util-directive' {
  interface LeafDirectiveData {
    /** The line as the file has it, where it is kept as it is. */
    asWritten?: string
  }
}

declare module 'mdast' {
  interface PhrasingContentMap {
    stepReference: StepReference
    valueReference: ValueReference
  }
  interface RootContentMap {
    stepReference: StepReference
    valueReference: ValueReference
  }
}

/** Make nodes (`leafDirective`, `valueReference`, `stepReference`) of what build-syntax.ts recognises. */
export function buildFromMarkdown(): Extension[] {
  return [
    directiveFromMarkdown(),
    {
      enter: {
        valueReference(token) {
          this.enter({type: 'valueReference', value: ''}, token)
        },
        stepReference(token) {
          this.enter({type: 'stepReference', value: ''}, token)
        },
      },
      exit: {
        valueReferencePath(token) {
          const node = this.stack.at(-1)
          if (node?.type === 'valueReference') node.value = this.sliceSerialize(token)
        },
        stepReferencePath(token) {
          const node = this.stack.at(-1)
          if (node?.type === 'stepReference') node.value = this.sliceSerialize(token)
        },
        valueReference(token) {
          this.exit(token)
        },
        stepReference(token) {
          this.exit(token)
        },
      },
    },
  ]
}

/** Write section directives and references back as Markdown; no other colon is escaped. */
export function buildToMarkdown(): Options {
  const leafDirective = directiveToMarkdown().handlers?.leafDirective as Handle
  return {
    handlers: {
      leafDirective: (node: LeafDirective, ...rest) => node.data?.asWritten ?? leafDirective(node, ...rest),
      valueReference: (node: {value: string}) => `:value[${node.value}]`,
      stepReference: (node: {value: string}) => `:step[${node.value}]`,
    },
    unsafe: [
      {character: ':', after: '(?:value|step)\\[', inConstruct: 'phrasing'},
      {atBreak: true, character: ':', after: ':[^:\\s]', notInConstruct: ['listItem', 'blockquote']},
    ],
  }
}
