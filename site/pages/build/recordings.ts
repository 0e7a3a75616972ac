import type {Element} from 'hast'
import {h} from 'hastscript'
import type {SiteBuild} from '../../site-data.ts'

/** Let the instrument be heard; nothing plays or loads by itself. */
export function recordings({build, slug, files}: SiteBuild): Element | undefined {
  const there = (build.values.recordings ?? []).flatMap(({file, says}) => {
    const address = `/builds/${slug}/${file?.value ?? ''}`
    return file && files.some((one) => one.address === address)
      ? [{address, says: says?.value ?? file.value}]
      : []
  })
  if (there.length === 0) return undefined
  return h('section.recordings', [
    h('h2#Recordings', there.length === 1 ? 'Recording' : 'Recordings'),
    ...there.map(({address, says}) =>
      h('figure', [
        h('figcaption', says),
        h('audio', {controls: true, preload: 'none', src: encodeURI(address), ariaLabel: says}),
      ]),
    ),
  ])
}
