import type {ElementContent} from 'hast'
import {h} from 'hastscript'
import type {SiteBuild} from '../../site-data.ts'

/** Say how strings are changed on this instrument; common practice, no source. */
export function changingStrings({build, plan}: SiteBuild): ElementContent[] {
  if (!plan.strings?.length) return []
  const isLoose = plan.bridge?.on === 'top'
  const through =
    build.values.anchors?.kind?.value === 'ferrule' ? 'through its hole at the tail' : 'on at the tail'
  return [
    h('h2', 'Changing strings'),
    h('ol', [
      h('li', 'Wear something over your eyes: a string under pull whips when it breaks or is cut.'),
      h(
        'li',
        `Change one string at a time${isLoose ? '; the pull of the others keeps the bridge in its place' : ', so that the neck keeps its pull'}.`,
      ),
      h('li', 'Turn the tuner until the string hangs loose before you cut or unwind it.'),
      h(
        'li',
        `Put the new one ${through}, over bridge and nut, leave slack for two or three turns, and wind them downwards on the post.`,
      ),
      h('li', 'Tune it up slowly to its note, stretch it gently by hand, and tune it again until it stays.'),
    ]),
    h('p.source', 'Source: common practice, no source.'),
  ]
}
