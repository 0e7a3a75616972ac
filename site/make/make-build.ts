import type {Root} from 'hast'
import {h} from 'hastscript'
import type {Build} from '../../plugins/build-file/build.ts'
import type {Problem} from '../../plugins/build-file/problem.ts'
import type {Plan} from '../../plugins/plan/shape/plan.ts'
import type {Relatives} from '../../plugins/sections/section.ts'
import {markup} from '../html/markup.ts'
import type {MadeBuild} from '../site-data.ts'
import {wordsOf} from './words-of.ts'

/** All that a build's pages are made of besides the frame around them. */
export interface MakeInput {
  /** The build file's path within `builds/`. */
  path: string
  text: string
  build: Build
  plan: Plan
  problems: readonly Problem[]
  relatives: Relatives
  /** Slugs of the other builds that the site shows and this one links to. */
  published: readonly string[]
  prefix: string
  isWriting: boolean
}

/** Word and draw a build: the costly part of its pages, made of nothing but its input. */
export async function makeBuild(input: MakeInput): Promise<MadeBuild> {
  const tree: Root = {type: 'root', children: [h('pre', input.text)]}
  return {html: markup(tree), headings: [], hanging: undefined, words: wordsOf(input.text)}
}
