import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {Box} from '../box/box.ts'
import type {JointPull} from '../joint/joint-pull.ts'
import type {Settled} from '../kit/settled.ts'
import {tornAcrossMpa, woodOf} from '../kit/woods.ts'
import type {NeckEnd} from './screw-edges.ts'

/** How a neck that ends at the box is held there, by statics about the upper edge of the box's end. In mm, N, MPa. */
export interface EndJoint extends NeckEnd {
  /** The pull times the strings' height over the edge that the neck turns about. */
  momentNmm: number
  /** That edge below the box's top. */
  edgeMm: number
  /** What of the neck's end meets the wall. */
  face: {widthMm: number; heightMm: number}
  /** The pull along the neck. */
  pullN: number
  /** The strings over the edge that the neck turns about. */
  leverMm: number
  /** A block stands behind the wall. */
  hasBlock: boolean
  glue: GluedFace
  /** Neither glue nor screws hold it: the row of screws that has no leverage, if any, and screws that would carry it. */
  weak?: {idle?: string | undefined; wouldDo?: EndScrews | undefined} | undefined
}

/** Screws from inside the box, along a neck that ends at it; mm. */
export interface EndScrews {
  size: number
  lengthMm: number
  atMm: number
  offsMm: number[]
  /** Below the box's top. */
  downMm: number
  through: string[]
}

/** What glue alone would come to on that face. */
export interface GluedFace {
  /** Nothing else holds the neck, or the file says that it is glued. */
  isGlued: boolean
  /** At the neck's back, tearing; none where the face is pressed together all over. */
  stressMpa: number
  /** What tears first. */
  weaker?: 'neck' | 'wall' | undefined
  /** What that breaks at. */
  breaksMpa?: number | undefined
  /** The most to ask of it. */
  mostMpa?: number | undefined
}

/** A glued joint that stays under load is asked a third of what it breaks at: common practice, no source. */
const margin = 3
/** Of the tensile strength along the grain, at best: Wood Handbook, FPL-GTR-190, ch. 10, End-Grain Joints. */
const endGrainHolds = 0.25

interface Around {
  box: Pick<Box, 'atMm' | 'neck' | 'outside' | 'blocks'>
  pull: JointPull | undefined
}

/**
 * Take a neck that ends at the box as a body that is free but for its joint. The strings, cut at the box's end, pull it
 * along their line; it turns about the upper edge of that end, so the moment on the joint is the pull times the
 * strings' height over that edge. Undefined of another joint, and where the pull or the neck's size is not known.
 */
export function planEndJoint(
  {values}: Settled,
  {box: {atMm, neck, outside, blocks = []}, pull}: Around,
): EndJoint | undefined {
  if (neck?.joins !== 'end' || atMm === undefined || !outside || !pull?.tailwardN) return undefined
  const {aboveTopMm, widthMm, thicknessMm: wholeMm} = neck
  const edgeMm = Math.max(0, -aboveTopMm)
  const heightMm = Math.min(wholeMm - aboveTopMm, outside.depthMm) - edgeMm
  if (heightMm <= 0) return undefined
  const overFaceMm = pull.heightMm + (pull.upN / pull.tailwardN) * (atMm - pull.stationMm)
  const leverMm = overFaceMm + aboveTopMm + edgeMm
  const face = {widthMm, heightMm}
  return {
    pullN: pull.tailwardN,
    leverMm,
    momentNmm: pull.tailwardN * leverMm,
    edgeMm,
    middleMm: wholeMm / 2 - aboveTopMm,
    halfMm: wholeMm / 2,
    face,
    hasBlock: blocks.some(({of}) => of === 'box.end-block'),
    glue: {
      isGlued: isGlued(values),
      stressMpa: gluedStressMpa(pull.tailwardN, leverMm, face),
      ...holds(values),
    },
  }
}

/** Glue is what holds an end without screws; beside screws it is there where the file names one for a solid neck. */
function isGlued({neck, screws = []}: BuildValues): boolean {
  const isScrewed = screws.some(({into}) => ['neck', 'heel'].includes(into?.value.toLowerCase() ?? ''))
  return !isScrewed || Boolean(neck?.glue && !neck.laminations)
}

/**
 * Give the greatest tearing stress (MPa) on a glued face that a pull (N) presses on off its middle, `leverMm` over its
 * upper edge: pull·(6·lever + 2·height) over width·height². A force and its moment about the middle of a rectangle.
 */
export function gluedStressMpa(
  pullN: number,
  leverMm: number,
  {widthMm, heightMm}: EndJoint['face'],
): number {
  return Math.max(0, (pullN * (6 * leverMm + 2 * heightMm)) / (widthMm * heightMm ** 2))
}

/** Say what such a face breaks at: the neck's end grain, or the wall's wood torn across its grain. */
function holds({neck, box}: BuildValues): Partial<GluedFace> {
  const stick = woodOf(neck?.wood?.value ?? neck?.laminations?.at(-1)?.wood?.value, neck)
  const wall = woodOf(box?.wood?.value)
  const neckMpa = stick?.morMpa === undefined ? undefined : endGrainHolds * stick.morMpa
  const wallMpa = wall && tornAcrossMpa(wall)
  const least = Math.min(neckMpa ?? Number.POSITIVE_INFINITY, wallMpa ?? Number.POSITIVE_INFINITY)
  if (!Number.isFinite(least)) return {}
  return {weaker: least === wallMpa ? 'wall' : 'neck', breaksMpa: least, mostMpa: least / margin}
}
