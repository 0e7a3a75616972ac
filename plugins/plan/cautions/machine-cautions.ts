import {firstFew, type Trigger} from './bench-facts.ts'

/** A bit of this size and more catches in wood of that thickness and less (mm): common practice, no source. */
const bigBitMm = 19.05
const thinTopMm = 6.35
/** As sawn, planing allowance included (mm): common practice, no source. */
const thinPartMm = 9.525

/** Cautions that follow from what is sawn, planed, routed and drilled, with the sizes that bring them. */
export const machineCautions = {
  'saw-kickback': ({values, made, size}) => {
    const [part] = made.cuts?.parts ?? []
    if (part) return `The ${part.name} is ripped ${size(part.widthMm)} wide out of ${size(part.lengthMm)}.`
    return values.neck && 'The neck is ripped to its width.'
  },
  'short-part': ({made, size}) => {
    const small = made.cuts?.parts.filter(({isSmall}) => isSmall) ?? []
    if (small.length === 0) return undefined
    const shortest = small.reduce((least, part) => (part.lengthMm < least.lengthMm ? part : least))
    const names = new Set(small.map(({name}) => name))
    return `Short here: ${firstFew([...names])}; the shortest is ${size(shortest.lengthMm)} long.`
  },
  'scarf-saw': ({made: {scarf}, size}) =>
    scarf && `The scarf is sawn at ${scarf.angleDeg}°, over ${size(scarf.runMm)} of the stick.`,
  'router-direction': ({values}) => {
    const radius = values.neck?.['round-over']?.radius
    return radius && `The back edges of the neck are rounded over, radius ${radius.text}.`
  },
  'big-bit': ({values, size}) => {
    const topMm = values.box?.top?.thickness?.mm
    const mm = Math.max(0, ...(values.box?.holes ?? []).map(({diameter}) => diameter?.mm ?? 0))
    if (topMm === undefined || topMm > thinTopMm || mm < bigBitMm) return undefined
    return `A hole of ${size(mm)} goes through a top of ${size(topMm)}.`
  },
  planer: ({made, size}) => {
    const thin = made.cuts?.parts.find(
      ({thicknessMm, of}) => thicknessMm <= thinPartMm && !of.startsWith('parts.'),
    )
    return thin && `The ${thin.name} is only ${size(thin.thicknessMm)} thick as it is sawn.`
  },
  'drill-clamp': ({made: {holes}}) =>
    holes?.length ? `${holes.length} ${holes.length === 1 ? 'hole is' : 'holes are'} drilled.` : undefined,
  eyes: ({values}) => values.neck && 'Sawing, planing and drilling throw chips.',
  noise: ({values}) => values.neck && 'The stick is milled and sawn, by machine if there is one.',
} satisfies Record<string, Trigger>
