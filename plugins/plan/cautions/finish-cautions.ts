import type {BenchFacts, Trigger} from './bench-facts.ts'

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
  chisel: ({plan: {box}, size}) => {
    const notch = box?.neck?.notch
    return (
      notch && `The neck is let into the box, ${size(notch.widthMm)} wide and ${size(notch.depthMm)} deep.`
    )
  },
} satisfies Record<string, Trigger>

function finished(is: (kind: string) => boolean): Trigger {
  return ({values}: BenchFacts) => {
    const kinds = (values.finish ?? []).flatMap(({kind}) => kind?.value ?? []).filter(is)
    return kinds.length > 0 ? `The finish: ${kinds.join(', then ')}.` : undefined
  }
}
