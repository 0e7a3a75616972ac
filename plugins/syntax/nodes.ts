import type {Literal} from 'mdast'
import type {LeafDirective} from 'mdast-util-directive'

/** `:value[path]` in a sentence; `value` is the path as written. */
export interface ValueReference extends Literal {
  type: 'valueReference'
}

/** `::name{attributes}` alone on a line; its syntax and its node are those of the directive extension's leaf. */
export type SectionDirective = LeafDirective

declare module 'mdast' {
  interface PhrasingContentMap {
    valueReference: ValueReference
  }
  interface RootContentMap {
    valueReference: ValueReference
  }
}
