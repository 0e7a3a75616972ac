import type {Element, Root} from 'hast'
import {toString as textOf} from 'hast-util-to-string'
import {h} from 'hastscript'
import {SKIP, visit} from 'unist-util-visit'
import type {Build} from '../build-file/schema/build.ts'
import {isRecording, plainPath, toldInProse} from '../checks/own-files.ts'
import {ownTarget} from '../syntax/body.ts'
import {isComputed} from './computed.ts'

/**
 * Let a recording that the prose leads to be heard right there, beside its link: it belongs to the day that names it.
 * Nothing plays or loads by itself. The first place that names one of `recordings` is led to from the page's top.
 */
export function rehypeRecordings({build}: {build: Build}) {
  const {files = [], troubles = []} = build.surroundings ?? {}
  const isThere = (path: string) => files.includes(path) && !troubles.some(({file}) => file === path)
  const anchors = new Map(toldInProse(build).map(({path, anchor}) => [path, anchor]))
  return (tree: Root): void => {
    visit(tree, (node, at, parent) => {
      if (isComputed(node)) return SKIP
      if (node.type !== 'element' || node.tagName !== 'a') return undefined
      const path = plainPath(ownTarget(String(node.properties.href ?? ''), false) ?? '')
      if (!isRecording(path) || !isThere(path)) return undefined
      const id = anchors.get(path)
      anchors.delete(path)
      parent!.children[at!] = player(node, id)
      return SKIP
    })
  }
}

function player(link: Element, id: string | undefined): Element {
  const {href} = link.properties
  const heard = {controls: true, preload: 'none', src: String(href), ariaLabel: textOf(link)}
  return h('span.recording', {id}, [link, ' ', h('audio', heard)])
}
