/** A link may carry so many changes, each so long: more is no link that this page made. */
const mostChanges = 300
const longestText = 300

/** Write the changes on a build as the end of an address: what stands behind its `#`. */
export function linkOf(slug: string, changes: readonly (readonly [path: string, text: string])[]): string {
  return new URLSearchParams([
    ['from', slug],
    ...changes.map(([path, text]): [string, string] => [path, text]),
  ]).toString()
}

/** What a link asks for; `left` counts what it has besides, which is not understood. */
export interface Asked {
  from: string
  changes: [path: string, text: string][]
  left: number
}

/** Read the end of an address, whoever wrote it. */
export function readLink(hash: string): Asked {
  const asked: Asked = {from: '', changes: [], left: 0}
  for (const [path, text] of new URLSearchParams(hash.replace(/^#/, ''))) {
    if (path === 'from') asked.from = /^[a-z0-9-]{1,100}$/.test(text) ? text : ''
    else if (isChange(path, text) && asked.changes.length < mostChanges) asked.changes.push([path, text])
    else asked.left += 1
  }
  return asked
}

const isChange = (path: string, text: string): boolean =>
  /^[a-z][a-z0-9.-]{0,99}$/i.test(path) && text.length <= longestText && !/[\0-\x1f]/.test(text)
