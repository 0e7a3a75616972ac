import {otherWords} from '../../tables/other-names.ts'
import {nearest} from '../nearest.ts'

/** Fold what people do not mean by case, blanks, hyphens and quotes. */
export const folded = (word: string): string =>
  word
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()

const close = (word: string): string => folded(word).replaceAll(' ', '')

/** Find which of some words another one means: itself in another spelling, another word for it, or the nearest. */
export function choicesFor(said: string, of: readonly string[]): string[] {
  const word = folded(said)
  if (word === '') return []
  const same = of.filter((one) => close(one) === close(said) || `${close(one)}s` === close(said))
  if (same.length > 0) return same.slice(0, 1)
  const other = of.filter((one) => otherWords[one]?.some((each) => folded(each) === word))
  if (other.length > 0) return other.slice(0, 1)
  const words = word.split(' ')
  const held = of.filter((one) =>
    folded(one)
      .split(' ')
      .every((each) => words.some((own) => own === each || (each.length > 3 && own.startsWith(each)))),
  )
  if (held.length === 1) return held
  const near = nearest(word, of)
  if (near !== undefined) return [near]
  const begun = of.filter((one) => word.length > 2 && folded(one).startsWith(word))
  if (begun.length > 0) return begun
  const meant = of.filter((one) => otherWords[one]?.some((each) => nearest(word, [each]) !== undefined))
  return meant.length > 0 ? meant : held
}
