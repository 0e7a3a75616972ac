import {fractions, type Inline} from '../kit.ts'

/** Write a bit's name with its fractions set as such, each figure kept beside its unit. */
export function bitWords(name: string): Inline[] {
  return fractions(name.replace(/(\d) (in|mm)\b/g, '$1\u00a0$2'))
}
