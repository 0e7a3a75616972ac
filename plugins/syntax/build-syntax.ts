import type {Extension} from 'micromark-util-types'
import {sectionDirective} from './section-directive.ts'
import {valueReference} from './value-reference.ts'

const colon = 58

/**
 * Extend micromark by what a build file adds to Markdown: section directives and value references.
 * Every other colon is left as it is.
 */
export const buildSyntax: Extension = {
  flow: {[colon]: sectionDirective},
  text: {[colon]: valueReference},
}
