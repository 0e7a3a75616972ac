import type {HoleBit} from '../kit/bits.ts'
import type {PartCalled} from '../stock/part.ts'

/** A length as the file writes it, with its unit; without a text where it is assumed or computed. */
export interface AsWritten {
  mm: number
  text?: string | undefined
}

/** Screws that are driven in one step, as the file has them. */
export interface DrivenScrews {
  count: number
  size: string
  length?: AsWritten | undefined
}

/** How long clamps stay on. */
type Clamped = {clampsH: number}

/** Where a bridge that is set back stands, from the nut line, under the first string and under the last. */
export interface SetBack {
  first: {name: string; mm: number}
  last?: {name: string; mm: number} | undefined
}

/** What sort of step it is, with what is set on the tool and all else that its words are made of. */
export type StepFacts =
  | {of: 'mill'; setting?: {planeMm: number} | undefined}
  | {of: 'rip'; setting?: {sawn: SawnPart[]} | undefined}
  | {of: 'rip-small' | 'trim'; setting: {sizes: TrimmedPart[]}}
  | {of: 'plane-faces'; setting: {layers: PlanedLayer[]}}
  | {of: 'mark-lines-stick' | 'mark-lines-face' | 'mark-lines-board'; setting?: undefined}
  | {of: 'groove-nut'; setting: {deep: AsWritten; wide?: AsWritten | undefined}}
  | {of: 'cut-down'; setting: {deepMm: number; leftMm: number; fromMm: number; toMm: number}}
  | {of: 'fit-parts'; setting?: undefined; names: string[]}
  | {of: 'glue-up'; setting: {clamps?: number | undefined} & Clamped}
  | {
      of: 'plane'
      setting?:
        | {
            stickMm?: number | undefined
            boardMm?: number | undefined
            capMm?: number | undefined
          }
        | undefined
    }
  | {
      of: 'saw-scarf'
      setting: {angleDeg: number; fromSquareDeg: number; slope: number; runMm: number}
      faceMm: number
    }
  | {of: 'glue-head'; setting: Clamped}
  | {of: 'glue-up-plate' | 'fret-ends' | 'drill-neck-dots' | 'box-strip'; setting?: undefined}
  | {
      of: 'shape-head'
      setting: {thicknessMm: number; retainer?: string | undefined}
      /** Of a head sawn out of the solid. */
      angleDeg?: number | undefined
      /** How far the face of a straight head is cut down. */
      dropMm?: number | undefined
    }
  | {of: DrillStep; setting?: {bits: HoleBit[]} | undefined}
  | {of: 'glue-up-face'; setting: {fromMm?: number[] | undefined} & Clamped}
  | {of: 'glue-up-board'; setting: {fromMm: number; toMm?: number | undefined} & Clamped}
  | {of: 'sand-board'; setting: {radiusMm: number}; sagittaMm: number; isSlotted: boolean}
  | {of: 'plane-sides'; setting?: {nutMm: number; tailMm?: number | undefined} | undefined}
  | {
      of: 'round-over'
      /** The stops are for the bit's centre, which cuts further by its run-in. */
      setting: {radiusMm: number; stops?: {fromMm: number; toMm: number; runInMm: number} | undefined}
    }
  | {
      of: 'mark-lines'
      setting?: undefined
      /** Sanding took the nut line and the centre line. */
      isSanded: boolean
      onBoard: boolean
      fretted: boolean
      length: AsWritten
      last: {label: string; mark: string}
    }
  | {
      of: 'slot-frets'
      setting?: {kerfMm?: number | undefined; depthMm?: number | undefined} | undefined
      onBoard: boolean
      /** One of them on the nut line. */
      hasZero: boolean
      /** Of the last fret, where there are others than that. */
      lastMark?: string | undefined
    }
  | {of: 'burn-marks'; setting?: undefined; burnt: ('lines' | 'dots')[]}
  | {
      of: 'fret'
      setting?: {pieces: number; wireMm: number; overhangMm: number} | undefined
      isFretted: boolean
      hasZero: boolean
    }
  | {
      of: 'cut-rod'
      setting?: {thick?: AsWritten | undefined; long?: AsWritten | undefined} | undefined
      for: 'nut' | 'bridge'
      rod: 'rod' | 'bolt'
    }
  | {of: 'fasten-hardware'; setting?: undefined; anchors?: string | undefined; extras: string[]}
  | {
      of: 'fasten'
      setting?:
        | {
            screws?: DrivenScrews | undefined
            shimMm?: number | undefined
            gapMm?: number | undefined
          }
        | undefined
      by: 'glue' | 'screws'
      length?: AsWritten | undefined
    }
  | {of: 'wire'; setting?: undefined; under?: string | undefined}
  | {of: 'fasten-top'; setting?: {screws: DrivenScrews} | undefined; held?: string | undefined}
  | {
      of: 'string'
      setting?: {strings: string[]} | undefined
      setBack?: SetBack | undefined
      /** How high a bridge stands that is no rod: it is bought, or made. */
      bridgeMm?: number | undefined
      /** The nut is no rod, bolt or fret. */
      hasFlatNut: boolean
    }
  | {
      of: 'set-up'
      setting?: {nut?: AsWritten | undefined; octave?: AsWritten | undefined} | undefined
      isFretted: boolean
    }
  | {
      of: 'box-prepare'
      setting?: undefined
      keepsPaper: boolean
      /** The paper comes off first; the centre line waits for that. */
      isStripped: boolean
      sizes: AsWritten[]
    }
  | {of: 'fit-blocks'; setting: Clamped; count: number}
  | {
      of: 'notch-box'
      setting: {
        width: AsWritten
        depth: AsWritten
        tailWidthMm?: number | undefined
        topOffMm?: number | undefined
      }
      bothEnds: boolean
    }
  | {of: 'sand'; setting?: undefined; keepsPaper: boolean}
  | {
      of: 'finish'
      setting?: {betweenH: number} | undefined
      /** As the file names it. */
      name: string
      coats: number
      on?: string | undefined
      /** What is glued later, and so kept bare. */
      bare: BareFace[]
      /** The file lists it in another order. */
      isMoved: boolean
      isOil: boolean
    }

export type DrillStep = 'drill-head' | 'drill-neck' | 'drill-top' | 'drill-box'

export interface SawnPart {
  called: PartCalled
  lengthMm: number
  widthMm: number
}

/** A short part as it is trimmed, in mm. */
export interface TrimmedPart extends SawnPart {
  thicknessMm: number
}

/** A lamination, or each strip of one, before the neck is glued up, in mm. */
export interface PlanedLayer {
  of: string
  thicknessMm: number
  strips: number
  stripMm: number
}

/** A face that is glued after the finish: where neck and box meet, and the rim under the top. */
export type BareFace = 'joint' | 'rim'
