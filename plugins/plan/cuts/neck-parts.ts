import type {Settled} from '../part.ts'
import type {Plan} from '../shape/plan.ts'
import {roughSize} from './rough-size.ts'
import type {WantedPart} from './wanted-part.ts'
import {woodRow} from './wood-row.ts'

/**
 * List what the neck is glued up from, sized as sawn (mm): the solid stick, or each strip of each lamination.
 * What is there when the scarf is sawn is as long as the blank; a lamination glued on later, or given an end, as long
 * as it lies on the neck. Empty until the neck's length, width and thickness are known.
 */
export function neckParts(settled: Settled, {neck: plan}: Plan): WantedPart[] {
  const {neck, head} = settled.values
  const budget = plan?.budget
  const widthMm = Math.max(neck?.width?.nut?.mm ?? 0, neck?.width?.tail?.mm ?? 0)
  if (!neck || !budget || budget.blankMm === undefined || widthMm === 0) return []
  const headMm = head?.length?.mm ?? budget.headMm
  const tailMm = budget.lengthMm - headMm
  const blankWhy = blankWhyOf(settled, plan)
  const blank = (thicknessMm: number, width: number) =>
    roughSize({lengthMm: budget.blankMm!, widthMm: width, thicknessMm}, settled, blankWhy)
  const layers = (plan.layup?.layers ?? []).filter(
    ({of}) => of === 'neck' || of.startsWith('neck.laminations.'),
  )
  return layers.flatMap(({of, thicknessMm, fromMm, toMm, beforeScarf}, i): WantedPart[] => {
    if (of === 'neck')
      return [
        {
          name: 'neck',
          ...woodRow(neck),
          ...blank(Math.max(thicknessMm, budget.blankThicknessMm ?? 0), widthMm),
          of,
        },
      ]
    const layer = neck.laminations![Number(of.split('.').at(-1)) - 1]!
    const strips = layer.strips?.value ?? layer.woods?.length ?? 1
    const stripMm = widthMm / strips
    const whole = layer.thickness?.mm ?? thicknessMm
    const isBlank = beforeScarf && fromMm === undefined && toMm === undefined
    const lies = Math.min(toMm ?? tailMm, tailMm) - Math.max(fromMm ?? -headMm, -headMm)
    if (!(lies > 0)) return []
    const sized = isBlank
      ? blank(whole, stripMm)
      : roughSize({lengthMm: lies, widthMm: stripMm, thicknessMm: whole}, settled)
    const name = layers.length > 1 ? `neck lamination ${i + 1}` : 'neck'
    return Array.from({length: strips}, (_, strip) => ({
      name: strips > 1 ? `${name}, strip ${strip + 1}` : name,
      ...woodRow({...layer, ...(layer.woods?.[strip] && {wood: layer.woods[strip]})}),
      ...sized,
      of,
    }))
  })
}

function blankWhyOf(settled: Settled, plan: Plan['neck']): string {
  const joint = settled.values.head?.joint?.value
  const ends = 'and 1/2 in more at each end'
  if (joint === 'scarf') return `the whole stick, with what the scarf gains and its saw cut takes, ${ends}`
  if (joint === 'solid' && plan?.budget?.blankThicknessMm)
    return `the whole stick, thick enough to saw the leaning head out of it, ${ends}`
  return `the whole stick, ${ends}`
}
