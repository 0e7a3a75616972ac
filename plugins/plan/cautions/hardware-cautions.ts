import {inch, poundForceN} from '../../tables/units.ts'
import type {BenchFacts, Trigger} from './bench-facts.ts'

/** The scale of an instrument for a small player (mm): common practice, no source. */
const smallScaleMm = inch(20)

const forChildren = /\b(child|children|kid|kids|toddlers?|small players?|little hands)\b/i
const electric = /\b(lamp|light|lights|led|leds|amp|amplifier|pre-?amp|speaker|mains|batter(y|ies))\b/i

/** Cautions that follow from strings, frets, rods, glue and wiring. */
export const hardwareCautions = {
  'mains-power': (facts) => {
    if (facts.values.pickup) return 'The pickup is played through an amplifier.'
    const extra = electricExtra(facts)
    return extra && `The extras name ${extra}.`
  },
  battery: (facts) => {
    const extra = electricExtra(facts)
    if (extra) return `The extras name ${extra}.`
    return facts.values.pickup?.kind?.value === 'microphone' ? 'A microphone is fed by a battery.' : undefined
  },
  solder: ({values}) => values.pickup && 'The pickup is wired to its jack.',
  rods: ({values: {nut, bridge}}) => {
    const cut = [
      ...(nut?.kind?.value === 'rod' || nut?.kind?.value === 'bolt'
        ? [`a ${nut.kind.value} for the nut`]
        : []),
      ...(bridge?.kind?.value === 'rod' ? ['a rod for the bridge'] : []),
    ]
    return cut.length > 0 ? `Cut to length here: ${cut.join(' and ')}.` : undefined
  },
  'fret-wire': ({values}) => isFretted(values) && 'Each fret is nipped off a length of wire.',
  'fret-ends': ({values}) =>
    isFretted(values) && `${values.scale?.lines?.value ?? 'The'} frets end at both edges of the neck.`,
  'string-eyes': ({values, units, made}) => {
    if (!values.strings?.length) return undefined
    const n = made.tensionTotalN
    const count = values.strings.length
    const many = count === 1 ? 'One string' : `All ${count} strings`
    if (n === undefined) return `${many} to bring up to pitch.`
    const pull = units === 'in' ? `${Math.round(n / poundForceN)} lbf` : `${Math.round(n)} N`
    return `${many} to bring up to pitch, ${pull} in all.`
  },
  'small-player': ({values, size}) => {
    const {title, summary, tags = [], extras = [], scale} = values
    const words = [title, summary, ...tags, ...extras].find((one) => one && forChildren.test(one.value))
    if (words) return `The file says: ${words.value}.`
    const mm = scale?.length?.mm
    return mm !== undefined && mm <= smallScaleMm ? `A scale of ${size(mm)} suits small hands.` : undefined
  },
  'glue-epoxy': glued(/epoxy/i),
  'glue-ca': glued(/\bca\b|cyano|super ?glue/i),
  'glue-pu': glued(/\bpu\b|polyurethane/i),
  'glue-hide': glued(/\b(hide|bone|fish)\b/i),
} satisfies Record<string, Trigger>

const isFretted = ({scale}: BenchFacts['values']) => scale?.fretted?.value === true || undefined

function glued(kind: RegExp): Trigger {
  return ({values}) => {
    const glue = values.neck?.glue?.value
    return glue !== undefined && kind.test(glue) ? `The neck is glued with ${glue}.` : undefined
  }
}

function electricExtra({values}: BenchFacts): string | undefined {
  return values.extras?.find(({value}) => electric.test(value))?.value
}

const oily = /oil|linseed|tung|danish|varnish|stain/i
const watery = /water|milk|egg|soap/i
const plainOil = /\boil\b|linseed|tung/i

/** Cautions that follow from finish, marks and what the box was. */
export const finishCautions = {
  'oil-rags': finished((kind) => oily.test(kind) && !watery.test(kind)),
  solvents: finished((kind) => !watery.test(kind) && (!plainOil.test(kind) || /stain|varnish/i.test(kind))),
  'lacquer-mist': finished((kind) => /lacquer|spray/i.test(kind)),
  'burn-marks': ({values: {markings}}) => {
    const burnt = (['lines', 'dots'] as const).filter((key) => /burn/i.test(markings?.[key]?.value ?? ''))
    return burnt.length > 0 ? `The ${burnt.join(' and ')} are burnt in.` : undefined
  },
  'lead-paint': ({values: {box, tags = []}}) => {
    const paper = box?.top?.paper?.value
    if (paper === 'strip') return 'The paper on the box is stripped off.'
    if (paper === 'keep') return 'The paper on the box stays.'
    const old = tags.find(({value}) => /^(old|antique|vintage|painted)( box)?$/i.test(value))
    return box && old && `The file calls it ${old.value}.`
  },
  'box-residue': ({values}) =>
    values.box && 'The box was something else before; the file does not say what it held.',
  chisel: ({made: {notch}, size}) =>
    notch && `The neck is let into the box, ${size(notch.widthMm)} wide and ${size(notch.depthMm)} deep.`,
} satisfies Record<string, Trigger>

function finished(is: (kind: string) => boolean): Trigger {
  return ({values}: BenchFacts) => {
    const kinds = (values.finish ?? []).flatMap(({kind}) => kind?.value ?? []).filter(is)
    return kinds.length > 0 ? `The finish: ${kinds.join(', then ')}.` : undefined
  }
}
