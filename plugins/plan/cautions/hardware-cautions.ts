import type {HazardName} from '../../tables/hazards.ts'
import {inch} from '../../tables/units.ts'
import type {BenchFacts, Trigger} from './bench-facts.ts'

/** The scale of an instrument for a small player (mm): common practice, no source. */
const smallScaleMm = inch(20)

const forChildren = /\b(child|children|kid|kids|toddlers?|small players?|little hands)\b/i
const electric = /\b(lamp|light|lights|led|leds|amp|amplifier|pre-?amp|speaker|mains|batter(y|ies))\b/i

/** Cautions that follow from strings, frets, rods, glue and wiring. */
export const hardwareCautions = {
  'mains-power': (facts) => {
    const extra = electricExtra(facts)
    if (facts.values.pickup) return {}
    return extra === undefined ? undefined : {extra}
  },
  battery: (facts) => {
    const extra = electricExtra(facts)
    if (extra !== undefined) return {extra}
    return facts.values.pickup?.kind?.value === 'microphone' ? {} : undefined
  },
  solder: ({values}) => values.pickup && {},
  rods: ({values: {nut, bridge}}) => {
    const kind = nut?.kind?.value
    const cut = {
      nut: kind === 'rod' || kind === 'bolt' ? kind : undefined,
      bridge: bridge?.kind?.value === 'rod' ? ('rod' as const) : undefined,
    }
    return cut.nut || cut.bridge ? cut : undefined
  },
  'fret-wire': ({values}) => (isFretted(values) || hasZeroFret(values) ? {} : undefined),
  'fret-ends': ({values}) => {
    if (!isFretted(values)) return hasZeroFret(values) ? {count: 1} : undefined
    const lines = values.scale?.lines?.value
    return {count: lines && lines + (hasZeroFret(values) ? 1 : 0)}
  },
  'string-eyes': ({values, made}) =>
    values.strings?.length ? {count: values.strings.length, tensionN: made.tensionTotalN} : undefined,
  'small-player': ({values}) => {
    const {title, summary, tags = [], extras = [], scale} = values
    const words = [title, summary, ...tags, ...extras].find((one) => one && forChildren.test(one.value))
    if (words) return {said: words.value}
    const mm = scale?.length?.mm
    return mm !== undefined && mm <= smallScaleMm ? {scaleMm: mm} : undefined
  },
  'glue-epoxy': glued(/epoxy/i),
  'glue-ca': glued(/\bca\b|cyano|super ?glue/i),
  'glue-pu': glued(/\bpu\b|polyurethane/i),
  'glue-hide': glued(/\b(hide|bone|fish)\b/i),
} satisfies {[Name in HazardName]?: Trigger<Name>}

const isFretted = ({scale}: BenchFacts['values']) => scale?.fretted?.value === true
const hasZeroFret = ({nut}: BenchFacts['values']) => nut?.kind?.value === 'zero-fret'

function glued(kind: RegExp) {
  return ({values}: BenchFacts): {glue: string} | undefined => {
    const glue = values.neck?.glue?.value
    return glue !== undefined && kind.test(glue) ? {glue} : undefined
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
    return burnt.length > 0 ? {burnt} : undefined
  },
  'lead-paint': ({values: {box, tags = []}}) => {
    const paper = box?.top?.paper?.value
    if (paper === 'strip' || paper === 'keep') return {paper}
    const old = tags.find(({value}) => /^(old|antique|vintage|painted)( box)?$/i.test(value))
    if (old && box) return {called: old.value}
    return box && {}
  },
  'box-residue': ({values}) => values.box && {},
  chisel: ({made: {notch}}) => notch && {widthMm: notch.widthMm, depthMm: notch.depthMm},
} satisfies {[Name in HazardName]?: Trigger<Name>}

function finished(is: (kind: string) => boolean) {
  return ({values}: BenchFacts): {kinds: string[]} | undefined => {
    const kinds = (values.finish ?? []).flatMap(({kind}) => kind?.value ?? []).filter(is)
    return kinds.length > 0 ? {kinds} : undefined
  }
}
