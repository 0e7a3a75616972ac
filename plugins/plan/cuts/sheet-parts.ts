import type {Settled} from '../part.ts'
import type {Plan} from '../shape/plan.ts'
import {roughSize} from './rough-size.ts'
import type {WantedPart} from './wanted-part.ts'
import {woodRow} from './wood-row.ts'

/** List fingerboard, cap and head plate, sized as sawn (mm), each once its length and thickness are known. */
export function sheetParts(settled: Settled, {neck: plan}: Plan): WantedPart[] {
  const {neck, head, fingerboard} = settled.values
  const widthMm = Math.max(neck?.width?.nut?.mm ?? 0, neck?.width?.tail?.mm ?? 0)
  const tailMm = plan?.budget ? plan.budget.lengthMm - plan.budget.headMm : undefined
  const ledgeMm = head?.ledge?.mm ?? 0
  const sheets = [
    {
      name: 'fingerboard',
      of: 'fingerboard',
      sheet: fingerboard,
      lengthMm: lengthBetween(fingerboard?.from?.mm ?? 0, fingerboard?.to?.mm ?? tailMm),
    },
    {name: 'neck cap', of: 'neck.cap', sheet: neck?.cap, lengthMm: lengthBetween(-ledgeMm, tailMm)},
    {
      name: 'head plate',
      of: 'head.plate',
      sheet: head?.plate,
      lengthMm: lengthBetween(ledgeMm, head?.length?.mm),
    },
  ]
  return sheets.flatMap(({name, of, sheet, lengthMm}) =>
    sheet?.thickness && lengthMm !== undefined && widthMm > 0
      ? [
          {
            name,
            of,
            ...woodRow(sheet),
            ...roughSize({lengthMm, widthMm, thicknessMm: sheet.thickness.mm}, settled),
          },
        ]
      : [],
  )
}

const lengthBetween = (fromMm: number, toMm: number | undefined) =>
  toMm !== undefined && toMm > fromMm ? toMm - fromMm : undefined
