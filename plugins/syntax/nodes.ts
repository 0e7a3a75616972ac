import type {Literal} from 'mdast'
import type {LeafDirective} from 'mdast-util-directive'

/** `:value[path]` in a sentence; `value` is the path as written. */
export interface ValueReference extends Literal {
  type: 'valueReference'
}

declare module 'mdast-util-directive' {
  interface LeafDirectiveData {
    /** The line as the file has it, where it is kept as it is. */
    asWritten?: string
  }
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
