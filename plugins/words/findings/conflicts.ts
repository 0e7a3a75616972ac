import {type Rounding, writeLength} from '../../build-file/quantities/write-length.ts'
import type {Conflict, ConflictKind} from '../../plan/kit/conflicts.ts'
import type {Plan} from '../../plan/plan.ts'
import type {Ruler} from '../lengths.ts'
import {behindNut, toSide} from '../sides.ts'
import {keyOf, only, type Wording, type WouldDo} from './wording.ts'

/** A conflict of the plan, and what the file says of the spacing where it is one of anchors. */
export interface TooNear {
  conflict: Conflict
  spacing?: string | undefined
}

interface Sentence {
  found: (near: TooNear, plan: Plan) => string
  /** What follows where a value would do, and where none does. */
  mended: (wouldDo: WouldDo, text: string, plan: Plan) => string
  otherwise: string
  rounding?: Rounding
}

/** Say a place that would do in words of sides, where a figure with a sign would have to be looked up. */
function placeInWords({path, mm}: WouldDo, plan: Plan): string | undefined {
  if (/\.off(?:\.\d+)?$/.test(path))
    return mm === 0 ? toSide(0, plan) : `${writeLength(Math.abs(mm), plan)} ${toSide(mm, plan)}`
  return /\.at(?:\.\d+)?$/.test(path) && mm < 0 ? `${writeLength(-mm, plan)} ${behindNut}` : undefined
}

const hole = {
  mended: (wouldDo: WouldDo, text: string, plan: Plan) =>
    `; ${placeInWords(wouldDo, plan) ?? `${keyOf(wouldDo)} ${text}`} would do`,
  otherwise: '; move it, or make it smaller',
}
const head = {
  mended: (wouldDo: WouldDo, text: string, plan: Plan) =>
    `; ${wouldDo.path} ${placeInWords(wouldDo, plan) ?? text} would do`,
  otherwise: '',
}

const sentences: Readonly<Record<ConflictKind, Sentence>> = {
  'hole-edge': {
    ...hole,
    found: ({conflict: {gapMm, needsMm}}, plan) =>
      `this sound hole’s rim is ${gapMm < 0 ? 'past' : `${writeLength(gapMm, plan, 'down')} from`} the box’s edge, where ${writeLength(needsMm, plan)} keeps it clear of the wall`,
  },
  'hole-block': {
    ...hole,
    found: ({conflict: {gapMm}}, plan) =>
      `this sound hole ${gapMm < 0 ? `runs ${writeLength(-gapMm, plan, 'up')} into` : howNear(gapMm, plan)} a block`,
  },
  'hole-neck': {
    ...hole,
    found: ({conflict: {gapMm}}, plan) => {
      if (gapMm >= 0) return `this sound hole’s rim ${howNear(gapMm, plan)} the neck`
      const isOver = plan.box?.neck?.joins === 'through'
      return `this sound hole lies ${writeLength(-gapMm, plan, 'up')} ${isOver ? 'over the neck that runs through under it' : 'under the neck'}`
    },
  },
  'hole-hole': {
    ...hole,
    found: ({conflict: {gapMm, needsMm}}, plan) =>
      `this sound hole ${gapMm < 0 ? 'runs into' : howNear(gapMm, plan)} another; ${writeLength(needsMm, plan)} keeps the wood between them whole`,
  },
  'hole-bridge': {
    ...hole,
    otherwise: '; move one of them',
    found: ({conflict: {gapMm}}, plan) =>
      `the bridge’s foot stands over this sound hole, by ${writeLength(-gapMm, plan, 'up')}`,
  },
  'post-edge': {
    ...head,
    found: ({conflict}, plan) =>
      `the post hole of ${names(conflict, plan)[0]} leaves ${left(conflict, plan)} of wood to the head’s edge, where ${needed(conflict, plan)} keeps it from splitting`,
  },
  'post-post': {
    ...head,
    found: ({conflict}, plan) => {
      const [post, other] = names(conflict, plan)
      return `the post holes of ${other} and ${post} leave ${left(conflict, plan)} of wood between them, where ${needed(conflict, plan)} keeps it whole`
    },
  },
  'button-button': {
    ...head,
    found: ({conflict}, plan) => {
      const [post, other] = names(conflict, plan)
      return `the tuner buttons of ${other} and ${post} would touch`
    },
  },
  'string-string': {
    ...head,
    found: ({conflict}, plan) => {
      const [post, other] = names(conflict, plan)
      return `${post} crosses ${other} on the way to its post`
    },
  },
  'string-post': {
    ...head,
    found: ({conflict}, plan) => {
      const [post, other] = names(conflict, plan)
      return `${post} runs into the post of ${other} on the way to its own`
    },
  },
  'anchor-edge': {
    rounding: 'down',
    found: ({conflict: {gapMm, needsMm}}, plan) =>
      `the outer anchors leave ${gapMm <= 0 ? 'nothing' : `only ${writeLength(gapMm, plan, 'down')}`} of wood at the neck’s edge; keep ${writeLength(needsMm, plan)}`,
    mended: (_, text) => `: ${text} between neighbours would do`,
    otherwise: ', or take a wider neck',
  },
  'anchor-anchor': {
    rounding: 'up',
    found: ({conflict: {gapMm}, spacing}, plan) =>
      `anchors ${writeLength(plan.anchorRow!.bodyMm, plan)} across, ${spacing} apart, ${gapMm < 0 ? 'run into each other' : 'leave hardly any wood between them'}`,
    mended: (_, text) => `; ${text} between neighbours would do`,
    otherwise: '',
  },
  'screw-edge': {
    found: ({conflict: {piece, isEnd, gapMm, needsMm}}, plan) =>
      `this screw ${gapMm < 0 ? 'misses' : `is ${writeLength(gapMm, plan, 'down')} from the ${isEnd ? 'end' : 'edge'} of`} the ${piece}, and needs ${writeLength(needsMm, plan, 'up')} or the wood splits`,
    mended: (wouldDo, text, plan) =>
      `; ${placeInWords(wouldDo, plan) ?? `${/\.down\b/.test(wouldDo.path) ? 'down' : 'a place'} ${text}`} would do`,
    otherwise: '; take a thinner screw',
  },
}

/** Word a conflict of the plan: what is too near to what, and what would do. */
export function tooNear(near: TooNear, plan: Plan): Wording {
  const {kind, wouldDo} = near.conflict
  const {found, mended, otherwise, rounding} = sentences[kind]
  const text = wouldDo && writeLength(wouldDo.mm, plan, rounding)
  return {
    message: `${found(near, plan)}${text ? mended(wouldDo, text, plan) : otherwise}`,
    expected: only(text),
  }
}

/** Say how near one thing is to another, never nearer than the ruler tells: `is only 1/16 in from`, `touches`. */
const howNear = (gapMm: number, ruler: Ruler): string =>
  gapMm < ruler.rulerMm - 1e-6 ? 'touches' : `is only ${writeLength(gapMm, ruler, 'down')} from`

const left = ({gapMm}: Conflict, ruler: Ruler) => writeLength(Math.max(gapMm, 0), ruler, 'down')
const needed = ({needsMm}: Conflict, ruler: Ruler) => writeLength(needsMm, ruler, 'up')

const names = ({posts = []}: Conflict, {strings}: Plan): string[] =>
  posts.map((at) => strings?.[at]?.name ?? `string ${at + 1}`)
