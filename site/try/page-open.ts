import {type Asked, readLink} from './link.ts'
import type {Around} from './session.ts'

/** A build as it was opened. */
export interface Opened {
  start: string
  slug: string
  around: Around
}

/** Fetch a build that can be changed, or the blank one. */
export async function fetchBuild(root: string, slug: string): Promise<Opened> {
  const get = async (file: string) => {
    const answer = await fetch(`${root}${file}`)
    if (!answer.ok) throw new Error(String(answer.status))
    return answer
  }
  const [start, around] = await Promise.all([
    get(slug ? `builds/${slug}/build.md` : 'try/blank.md').then((answer) => answer.text()),
    get(slug ? `builds/${slug}/around.json` : 'try/blank.json').then((answer) => answer.json()),
  ])
  return {start, slug: slug || 'new-build', around}
}

/** Choose a build, or the blank one where it is not offered; tells which. */
export function choose(choice: HTMLSelectElement, slug: string): boolean {
  const isThere = [...choice.options].some(({value}) => value === slug)
  choice.value = isThere ? slug : ''
  return isThere
}

/** Read what the address asks for, choose it, and say what of it cannot be had. */
export function askedFor(choice: HTMLSelectElement, told: HTMLElement): Asked['changes'] {
  const asked = readLink(location.hash)
  const given = asked.from || (new URLSearchParams(location.search).get('from') ?? '')
  const isThere = choose(choice, given)
  const left = given && !isThere ? 'The build that this link starts from is not in this journal.' : ''
  const more = asked.left > 0 ? `${asked.left} of the link’s changes cannot be read, and are left out.` : ''
  told.textContent = [left, more].filter(Boolean).join(' ')
  return isThere || !given ? asked.changes : []
}
