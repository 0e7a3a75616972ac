import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {Ruler} from '../lengths.ts'
import {only, type Wording, type WouldDo} from './wording.ts'

/** Places listed under a key for so many strings, or, where the strings are not listed, for so many under `at`. */
export function tunersUneven({
  key,
  listed,
  ...facts
}: {key: string; listed: number} & ({strings: number} | {ats: number})): Wording {
  return {
    message:
      'strings' in facts
        ? `${listed} places under tuners ${key} for ${facts.strings} ${facts.strings === 1 ? 'string' : 'strings'}; list one for each string, in the strings’ order`
        : `${listed} places under tuners ${key} and ${facts.ats} under at; each tuner needs one of both`,
  }
}

/** What is too near on the head: the names of the strings whose posts they are, and how far apart they are. */
interface OnHead {
  post: string
  other: string
  gapMm: number
  needsMm: number
  wouldDo?: WouldDo | undefined
}

export function tunerHolesClose(found: OnHead, ruler: Ruler): Wording {
  const {post, other, gap, needs} = written(found, ruler)
  const text = `the post holes of ${other} and ${post} leave ${gap} of wood between them, where ${needs} keeps it whole`
  return mended(text, found, ruler)
}

export function tunerNearEdge(found: OnHead, ruler: Ruler): Wording {
  const {post, gap, needs} = written(found, ruler)
  const text = `the post hole of ${post} leaves ${gap} of wood to the head’s edge, where ${needs} keeps it from splitting`
  return mended(text, found, ruler)
}

export function buttonsTouch(found: OnHead, ruler: Ruler): Wording {
  return mended(`the tuner buttons of ${found.other} and ${found.post} would touch`, found, ruler)
}

export function stringFoulsPost(found: OnHead, ruler: Ruler): Wording {
  return mended(`${found.post} runs into the post of ${found.other} on the way to its own`, found, ruler)
}

export function stringsCross(found: OnHead, ruler: Ruler): Wording {
  return mended(`${found.post} crosses ${found.other} on the way to its post`, found, ruler)
}

const written = ({post, other, gapMm, needsMm}: OnHead, ruler: Ruler) => ({
  post,
  other,
  gap: writeLength(Math.max(gapMm, 0), ruler, 'down'),
  needs: writeLength(needsMm, ruler, 'up'),
})

function mended(found: string, {wouldDo}: OnHead, ruler: Ruler): Wording {
  const text = wouldDo && writeLength(wouldDo.mm, ruler)
  return {
    message: text ? `${found}; ${wouldDo.path} ${text} would do` : found,
    expected: only(text),
  }
}
