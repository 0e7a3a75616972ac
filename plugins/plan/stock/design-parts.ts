import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {Neck} from '../neck/neck.ts'
import {endAllowanceMm, type Finish, type PartCalled, type Size, type WantedPart, woodRow} from './part.ts'

/** Add what planing takes off each face, and the allowance at each end, to a finished size (mm). */
function roughSize(size: Size, {saw}: BuildValues, blank?: Finish['blank']): Size & {why: Finish} {
  const planeMm = saw?.plane?.mm ?? 0
  return {
    lengthMm: blank ? size.lengthMm : size.lengthMm + 2 * endAllowanceMm,
    widthMm: size.widthMm + 2 * planeMm,
    thicknessMm: size.thicknessMm + 2 * planeMm,
    why: {...size, planeMm, blank},
  }
}

/** List the parts that the design implies: of the neck, the sheets on it, and the blocks inside the box. */
export const designParts = (values: BuildValues, neck: Neck | undefined): WantedPart[] => [
  ...neckParts(values, neck),
  ...sheetParts(values, neck),
  ...blockParts(values),
]

/**
 * List what the neck is glued up from, sized as sawn (mm): the solid stick, or each strip of each lamination.
 * What is there when the scarf is sawn is as long as the blank; a lamination glued on later, or given an end, as long
 * as it lies on the neck. Empty until the neck's length, width and thickness are known.
 */
function neckParts(values: BuildValues, plan: Neck | undefined): WantedPart[] {
  const {neck, head} = values
  const budget = plan?.budget
  const widthMm = Math.max(neck?.width?.nut?.mm ?? 0, neck?.width?.tail?.mm ?? 0)
  if (!neck || !budget || budget.blankMm === undefined || widthMm === 0) return []
  const headMm = head?.length?.mm ?? budget.headMm
  const tailMm = budget.lengthMm - headMm
  const joint = head?.joint?.value
  const isLeaning = joint === 'solid' && budget.blankThicknessMm !== undefined
  const counts = joint === 'scarf' ? joint : isLeaning ? 'leaning head' : 'plain'
  const blank = (thicknessMm: number, width: number) =>
    roughSize({lengthMm: budget.blankMm!, widthMm: width, thicknessMm}, values, counts)
  const layers = (plan.layup?.layers ?? []).filter(
    ({of}) => of === 'neck' || of.startsWith('neck.laminations.'),
  )
  return layers.flatMap(({of, thicknessMm, fromMm, toMm, beforeScarf}, i): WantedPart[] => {
    if (of === 'neck')
      return [
        {
          called: {is: 'neck'},
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
      : roughSize({lengthMm: lies, widthMm: stripMm, thicknessMm: whole}, values)
    const called: PartCalled = layers.length > 1 ? {is: 'neck-lamination', number: i + 1} : {is: 'neck'}
    return Array.from({length: strips}, (_, strip) => ({
      called: strips > 1 ? {...called, strip: strip + 1} : called,
      ...woodRow({...layer, ...(layer.woods?.[strip] && {wood: layer.woods[strip]})}),
      ...sized,
      of,
    }))
  })
}

/** List fingerboard, cap and head plate, sized as sawn (mm), each once its length and thickness are known. */
function sheetParts(values: BuildValues, plan: Neck | undefined): WantedPart[] {
  const {neck, head, fingerboard} = values
  const widthMm = Math.max(neck?.width?.nut?.mm ?? 0, neck?.width?.tail?.mm ?? 0)
  const tailMm = plan?.budget ? plan.budget.lengthMm - plan.budget.headMm : undefined
  const ledgeMm = head?.ledge?.mm ?? 0
  const sheets = [
    {
      is: 'fingerboard',
      of: 'fingerboard',
      sheet: fingerboard,
      lengthMm: lengthBetween(fingerboard?.from?.mm ?? 0, fingerboard?.to?.mm ?? tailMm),
    },
    {is: 'neck-cap', of: 'neck.cap', sheet: neck?.cap, lengthMm: lengthBetween(-ledgeMm, tailMm)},
    {
      is: 'head-plate',
      of: 'head.plate',
      sheet: head?.plate,
      lengthMm: lengthBetween(ledgeMm, head?.length?.mm),
    },
  ] as const
  return sheets.flatMap(({is, of, sheet, lengthMm}) =>
    sheet?.thickness && lengthMm !== undefined && widthMm > 0
      ? [
          {
            called: {is},
            of,
            ...woodRow(sheet),
            ...roughSize({lengthMm, widthMm, thicknessMm: sheet.thickness.mm}, values),
          },
        ]
      : [],
  )
}

const lengthBetween = (fromMm: number, toMm: number | undefined) =>
  toMm !== undefined && toMm > fromMm ? toMm - fromMm : undefined

/** List the blocks inside the box, sized as sawn (mm); the grain runs along the longer side. */
function blockParts(values: BuildValues): WantedPart[] {
  const {blocks = [], 'end-block': endBlock} = values.box ?? {}
  const named = [
    ...(endBlock ? [{called: {is: 'end-block'} as const, of: 'box.end-block', block: endBlock}] : []),
    ...blocks.map((block, i) => ({
      called: {is: 'block', number: blocks.length > 1 ? i + 1 : undefined} as const,
      of: `box.blocks.${i + 1}`,
      block,
    })),
  ]
  return named.flatMap(({called, of, block}) => {
    if (!block.length || !block.width || !block.thickness) return []
    const [lengthMm, widthMm] = [block.length.mm, block.width.mm].sort((a, b) => b - a) as [number, number]
    return [
      {
        called,
        of,
        proposed: block.length.proposed,
        ...woodRow(block),
        ...roughSize({lengthMm, widthMm, thicknessMm: block.thickness.mm}, values),
      },
    ]
  })
}
