import type {PlanPart} from '../part.ts'
import type {WouldDo} from '../would-do.ts'
import {type Bow, neckBow} from './bow.ts'
import {type Budget, neckBlank} from './budget.ts'
import type {NeckConcern} from './concern.ts'
import {cutNeck, type NeckSection, neckSections} from './cut.ts'
import {neckEdges} from './edges.ts'
import {type Fretting, neckFretting} from './fretting.ts'
import {type Head, neckHead} from './head.ts'
import {neckLayup} from './layup.ts'
import {neckMass} from './mass.ts'
import {neckModel} from './model.ts'
import {type Movement, neckMovement} from './movement.ts'
import {neckRounding} from './round-over.ts'
import {neckScarf, nutSeat, type Scarf} from './scarf.ts'
import {stringAngles} from './string-angles.ts'

export interface Neck {
  sections?: NeckSection[] | undefined
  bow?: Bow | undefined
  massKg?: number | undefined
  balanceMm?: number | undefined
  budget?: Budget | undefined
  scarf?: Scarf | undefined
  /** Each string's own angle behind the nut. */
  stringAngleDeg?: number[] | undefined
  /** The string that goes down least, where that is too little. */
  flattest?:
    | {
        /** Counted from 0. */
        string: number
        angleDeg: number
        leastDeg: number
      }
    | undefined
  /** The string that goes down most, where that is too much. */
  steepest?:
    | {
        /** Counted from 0. */
        string: number
        angleDeg: number
        mostDeg: number
      }
    | undefined
  /** The head at which no string goes down too steeply. */
  gentlerHead?:
    | {
        angleDeg?: number | undefined
        dropMm?: number | undefined
      }
    | undefined
  head?: Head | undefined
  layup?:
    | {
        /** From the playing face down. */
        layers: {
          /** Its path in the build file. */
          of: string
          wood?: string | undefined
          /** Its density and stiffness are known. */
          isWoodKnown: boolean
          /** As planed. */
          thicknessMm: number
          fromMm?: number | undefined
          toMm?: number | undefined
          beforeScarf: boolean
          strips?: number | undefined
        }[]
        /** Without fingerboard and cap. */
        stickMm: number
        /** Playing face to back. */
        totalMm: number
        laminationsMm?: number | undefined
        wantedMm?: number | undefined
        planedMm?: number | undefined
        overMm?: number | undefined
        mostOverMm?: number | undefined
        /** The value to change, and what would do, in mm. */
        wouldDo?: WouldDo | undefined
      }
    | undefined
  roundOver?:
    | {
        radiusMm: number
        fromMm: number
        toMm: number
        /** How far the cutter takes to full depth. */
        runInMm: number
        /** Flat side left for the cutter’s bearing. */
        flatMm: number
        bearingNeedsMm: number
        /** The largest radius that leaves enough. */
        largestMm: number
      }
    | undefined
  edges?:
    | {
        /** From an outer string to the edge. */
        nutMm: number
        edgeLeastMm: number
        /** Between strings, where fingers go. */
        neighbourLeastMm: number
        lastLineMm?: number | undefined
        /** Between the closest neighbours. */
        neighbourNutMm?: number | undefined
        neighbourLastLineMm?: number | undefined
        nearEdge?:
          | {
              where: string
              gapMm: number
              /** The value to change, and what would do, in mm. */
              wouldDo?: WouldDo | undefined
            }[]
          | undefined
        tooClose?:
          | {
              where: string
              gapMm: number
              /** The value to change, and what would do, in mm. */
              wouldDo?: WouldDo | undefined
            }[]
          | undefined
      }
    | undefined
  nutSeat?:
    | {
        grooveMm: number
        leftMm: number
        leastMm: number
        deepestMm: number
        overlapMm: number
      }
    | undefined
  movement?: Movement | undefined
  fretting?: Fretting | undefined
}

/** What is computed of the neck, each after those that it reads. */
const concerns: readonly NeckConcern[] = [
  neckLayup,
  neckRounding,
  neckSections,
  neckMass,
  neckMovement,
  stringAngles,
  neckScarf,
  neckBlank,
  neckHead,
  neckEdges,
  nutSeat,
  neckFretting,
  neckBow,
]

/** Compute the neck from its body: sections, bow, mass, scarf, blank, head, strings across it and fretting. */
export const neck: PlanPart = (settled, soFar) => {
  const model = neckModel(settled.values, soFar)
  if (!model) return {}
  const cut = cutNeck(model)
  const whole = {...soFar.neck}
  for (const concern of concerns) Object.assign(whole, concern({model, cut, settled, soFar, neck: whole}))
  return {neck: whole}
}
