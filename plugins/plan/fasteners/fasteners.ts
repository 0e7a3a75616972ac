import {screws as screwRows} from '../../tables/screws.ts'
import {inch} from '../../tables/units.ts'
import type {Box} from '../box/box.ts'
import type {JointPull} from '../joint/joint-pull.ts'
import type {Conflict} from '../kit/conflicts.ts'
import type {Settled} from '../kit/settled.ts'
import type {NeckTaper} from '../neck-shape/taper.ts'
import type {EndJoint} from './end-joint.ts'
import type {Fastener} from './fastener.ts'
import {jointLoads} from './joint-loads.ts'
import {depthEdge, screwEdge} from './screw-edges.ts'
import type {Pieces} from './screw-pieces.ts'
import {blockAstray, isForTop, offBox, originMm, type ScrewPlace, underNeck} from './screw-places.ts'
import {type Route, screwRoute} from './screw-route.ts'
import {type Bite, boredFor, screwSize, withdrawalN} from './screw-size.ts'
import {leastThread, threadOf} from './screw-thread.ts'

/** What must stay under a bare head, at least: common practice, no source. */
const leastUnderHeadMm = inch(1 / 4)

/** A screw holds as many times its load. */
const margin = 3

const slackN = 1e-6

const slackMm = 1e-6

/**
 * Work out each screw, in the file's order: bits, wood under the head, thread, how far its tip stays from the far
 * face, what it holds and what the strings ask of it. A screw that the file does not say enough about is left out.
 */
export function planFasteners(
  settled: Settled,
  places: readonly ScrewPlace[] | undefined,
  {box = {}, taper}: {box: Box | undefined; taper: NeckTaper | undefined},
  {pull, end}: {pull: JointPull | undefined; end: EndJoint | undefined},
): {fasteners: Fastener[] | undefined; conflicts: Conflict[]} {
  const around: Around = {values: settled.values, box, taper, end}
  const worked = (places ?? []).flatMap((place) => workOut(place, settled, around) ?? [])
  const loads = jointLoads(
    worked.map(({fastener}) => fastener),
    {pull, end, box},
  )
  const fasteners = worked.map((screw, i) => ({
    ...screw.fastener,
    loadN: loads[i],
    overN: overload(loads[i], screw.fastener),
    sizeForLoad: gaugeFor(loads[i] ?? 0, screw),
  }))
  return {fasteners: fasteners.length ? fasteners : undefined, conflicts: worstOfEach(worked)}
}

/** Of the screws too near an edge that share what is to change, keep the worst. */
function worstOfEach(worked: readonly WorkedOut[]): Conflict[] {
  const worst = new Map<string, Conflict>()
  const short = ({needsMm, gapMm}: Conflict) => needsMm - gapMm
  for (const {fastener, conflict} of worked) {
    const where = conflict?.wouldDo?.path ?? fastener.of
    const known = worst.get(where)
    if (conflict && (!known || short(conflict) > short(known))) worst.set(where, conflict)
  }
  return [...worst.values()]
}

interface Around extends Pieces {
  end: EndJoint | undefined
}

interface WorkedOut {
  fastener: Fastener
  /** Where it stands too near an edge or an end. */
  conflict: Conflict | undefined
  /** The same of a screw with another shank (mm). */
  conflictOf: (shankMm: number) => Conflict | undefined
  bites: readonly Bite[]
}

/** What the strings draw a screw by above a third of what it holds (N); undefined where it holds that. */
function overload(loadN = 0, {withdrawalN}: Fastener): number | undefined {
  const overN = loadN - withdrawalN / margin
  return overN > slackN ? overN : undefined
}

/**
 * The smallest gauge of the table that holds three times the load (N), where this one does not: as far from edges as it
 * needs, and with thread enough.
 */
function gaugeFor(loadN: number, {fastener, bites, conflict, conflictOf}: WorkedOut): number | undefined {
  const neededN = loadN * margin
  if (neededN <= fastener.withdrawalN) return undefined
  const {size, lengthMm, underHeadMm, ownThreadMm, shortestMm} = fastener
  const isLongEnough = lengthMm >= shortestMm - slackMm
  return screwRows.find(({gauge}) => {
    const {shankMm} = screwSize(gauge)
    const leastMm = leastThread.shanks * shankMm
    const hasThread = !isLongEnough || (ownThreadMm >= leastMm && lengthMm >= underHeadMm + leastMm)
    return (
      gauge > size &&
      withdrawalN(shankMm, bites, fastener.isEndGrain) >= neededN &&
      hasThread &&
      (conflict !== undefined || !conflictOf(shankMm))
    )
  })?.gauge
}

/** Work out one screw, all but what the strings ask of it; undefined where the file says too little about it. */
function workOut(place: ScrewPlace, settled: Settled, around: Around): WorkedOut | undefined {
  const {values, units, rulerMm} = settled
  const {box, end} = around
  const row = values.screws?.[Number(place.of.split('.')[1]) - 1]
  const route = row && screwRoute(row, place, around)
  if (!row?.size || !row.length || !route) return undefined
  const {holds, passes, way, missesBlock} = route
  const isBlockless = missesBlock && !box.blocks
  const underHeadMm = isBlockless ? 0 : thicknessOf(route)
  if (underHeadMm === undefined) return undefined
  const gauge = row.size.value
  const {shankMm} = screwSize(gauge)
  const through = passes.map(({name}) => name)
  const roomMm = isBlockless ? undefined : holds.mm
  const {bites, tip, hardness, ...thread} = threadOf(row, route, {underHeadMm, roomMm})
  const isInNeck = ['neck', 'heel'].includes(holds.name)
  const joinsNeck = isInNeck || through.includes('neck')
  const isEndGrain = way === 'along' && isInNeck
  const downMm = way === 'along' && joinsNeck ? (place.downMm ?? end?.middleMm) : undefined
  const isGlued = joinsNeck && Boolean(values.neck?.glue && !values.neck.laminations)
  const holdsTop = isForTop(row) || undefined
  const head = {box, taper: around.taper, headMm: shankMm, rulerMm}
  const fastener: Fastener = {
    of: place.of,
    proposed: place.proposed,
    stationMm: place.stationMm,
    offMm: place.offMm,
    downMm,
    size: gauge,
    through,
    into: holds.name,
    way,
    head: row.head?.value,
    wood: tip?.row,
    hardness,
    ...boredFor(gauge, hardness, units),
    countersinkMm: row.head?.value === 'round' ? undefined : 2 * shankMm,
    underHeadMm,
    leastUnderHeadMm,
    hasPad: through.includes('block') || through.includes('washer'),
    joinsNeck,
    holdsTop,
    covered: holdsTop && underNeck(place, head),
    isEndGrain,
    ...thread,
    shortestMm: isBlockless ? 0 : thread.shortestMm,
    withdrawalN: withdrawalN(shankMm, bites, isEndGrain),
    isGlued,
    isGlueEnough: isGlued && (!isEndGrain || isEnough(end?.glue)),
    astray: missesBlock ? blockAstray(place, box) : undefined,
    offBox: missesBlock ? undefined : offBox(place, through, box, rulerMm),
  }
  const edgePieces = [holds, ...passes.filter(({name}) => name === 'block')]
  const spot = {...place, originMm: originMm(place, box), rulerMm}
  const conflictOf = (mm: number) =>
    missesBlock ? undefined : (screwEdge(mm, edgePieces, spot) ?? depthEdge(mm, {...spot, downMm}, end))
  return {fastener, conflict: conflictOf(shankMm), conflictOf, bites}
}

/** Tell whether glue alone is asked no more than it may be. */
const isEnough = (glue: EndJoint['glue'] | undefined): boolean =>
  glue?.mostMpa !== undefined && glue.stressMpa <= glue.mostMpa

function thicknessOf({passes}: Route): number | undefined {
  return passes.reduce<number | undefined>(
    (sum, {mm}) => (sum === undefined || mm === undefined ? undefined : sum + mm),
    0,
  )
}
