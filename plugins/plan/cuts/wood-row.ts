import {woodOf} from '../wood-of.ts'

interface Named {
  wood?: {value: string}
  density?: {kgM3: number}
  stiffness?: {mpa: number}
}

/** Name what something is made of, as written and by the row of the wood table that decides what matches it. */
export function woodRow({wood, ...own}: Named): {wood: string; woodRow: string} {
  const name = wood?.value.trim()
  if (!name || name.toLowerCase() === 'any') return {wood: 'any', woodRow: 'any'}
  return {wood: name, woodRow: woodOf(name, own)?.row ?? name.toLowerCase().replace(/[\s-]+/g, ' ')}
}
