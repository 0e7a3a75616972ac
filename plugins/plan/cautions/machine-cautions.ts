import type {HazardName} from '../../tables/hazards.ts'
import {placeOf, type Trigger} from './bench-facts.ts'

/** A bit of this size and more catches in wood of that thickness and less (mm): common practice, no source. */
const bigBitMm = 19.05
const thinTopMm = 6.35
/** As sawn, planing allowance included (mm): common practice, no source. */
const thinPartMm = 9.525

/** Cautions that follow from what is sawn, planed, routed and drilled, with the sizes that bring them. */
export const machineCautions = {
  'saw-kickback': ({values, made}) => {
    const [part] = made.cuts?.parts ?? []
    if (part) return {part: {name: part.name, widthMm: part.widthMm, lengthMm: part.lengthMm}}
    return values.neck && {}
  },
  'short-part': ({made}) => {
    const small = made.cuts?.parts.filter(({isSmall}) => isSmall) ?? []
    if (small.length === 0) return undefined
    const names = [...new Set(small.map(({name}) => name))]
    return {names, shortestMm: Math.min(...small.map(({lengthMm}) => lengthMm))}
  },
  'scarf-saw': ({made: {scarf}}) => scarf && {angleDeg: scarf.angleDeg, runMm: scarf.runMm},
  'router-direction': ({values}) => {
    const radius = values.neck?.['round-over']?.radius
    return radius && {radius: radius.text}
  },
  'big-bit': ({values}) => {
    const topMm = values.box?.top?.thickness?.mm
    const mm = Math.max(0, ...(values.box?.holes ?? []).map(({diameter}) => diameter?.mm ?? 0))
    if (topMm === undefined || topMm > thinTopMm || mm < bigBitMm) return undefined
    return {mm, topMm}
  },
  planer: ({made}) => {
    const thin = (made.cuts?.parts ?? []).filter(({thicknessMm}) => thicknessMm <= thinPartMm)
    const [first] = thin
    return first && {name: first.name, thicknessMm: first.thicknessMm, places: thin.map(placeOf)}
  },
  'drill-clamp': ({made: {holes}}) => (holes?.length ? {count: holes.length} : undefined),
  eyes: ({values}) => values.neck && {},
  noise: ({values}) => values.neck && {},
} satisfies {[Name in HazardName]?: Trigger<Name>}
