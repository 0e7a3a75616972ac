import type {RootContent} from 'mdast'
import type {Crowns} from '../plan/neck/fretting.ts'
import type {Plan} from '../plan/plan.ts'
import {fineBoth, lengthWords} from '../words/lengths.ts'
import {type Inline, paragraph, subHeading} from './kit.ts'
import {table} from './kit-table.ts'
import {length, lengthAlone, measure} from './measures.ts'

/** Say how to fret the neck: the slots, the wire to buy, and the pieces to cut from it. */
export function fretting(plan: Plan): RootContent[] {
  const {fretting: frets} = plan.neck ?? {}
  if (!frets) return []
  const {pieces, wireMm, overhangMm} = frets
  return [
    subHeading('Fretting'),
    ...slots(plan).map((said) => paragraph(...said)),
    ...(frets.crowns ? [paragraph(...crowns(frets.crowns, plan))] : []),
    ...(wireMm === undefined
      ? []
      : [
          paragraph(
            'Buy at least ',
            length(wireMm, plan, 'up'),
            ' of wire. Each piece is cut ',
            lengthAlone(overhangMm, plan),
            ' over at both ends, and filed flush when it is in.',
          ),
        ]),
    ...(pieces
      ? [
          table({
            caption: 'Pieces of wire to cut',
            columns: [{head: 'Fret'}, {head: 'Long', align: 'right'}],
            rows: alike(pieces, plan).map(({labels, lengthMm}) => [
              labels.length > 1 ? `${labels[0]} to ${labels.at(-1)}` : labels[0]!,
              lengthAlone(lengthMm, plan, 'up'),
            ]),
          }),
        ]
      : []),
  ]
}

/** Put neighbours together that are cut to the same mark. */
function alike(pieces: readonly {label: string; lengthMm: number}[], plan: Plan) {
  const runs: {labels: string[]; lengthMm: number; written: string}[] = []
  for (const {label, lengthMm} of pieces) {
    const written = lengthWords(lengthMm, plan, 'up')
    const last = runs.at(-1)
    if (last?.written === written) last.labels.push(label)
    else runs.push({labels: [label], lengthMm, written})
  }
  return runs
}

/** Say what the wire's crowns leave of the face, and how far the face has to reach past the last. */
function crowns({widthMm, leastBareMm, between}: Crowns, {units}: Plan): Inline[] {
  const fine = (mm: number) => measure(...fineBoth(mm, {units}, 3))
  const bare: Inline[] =
    leastBareMm > 0 ? [', stay ', fine(leastBareMm), ' of bare wood'] : [', stays no wood at all']
  return [
    'A crown takes ',
    fine(widthMm),
    `: between the nearest two, ${between[0]} and ${between[1]}`,
    ...bare,
    ', and the face has to reach ',
    fine(widthMm / 2),
    ' past the last line.',
  ]
}

function slots({neck, units}: Plan): Inline[][] {
  const {slotWidthMm, slotDepthMm, fitMm, inMm} = neck!.fretting!
  if (slotWidthMm === undefined) return []
  const fine = (mm: number) => measure(...fineBoth(mm, {units}, 3))
  const deep: Inline[] = slotDepthMm === undefined ? [] : [' and ', fine(slotDepthMm), ' deep']
  const through =
    slotDepthMm !== undefined && inMm !== undefined && slotDepthMm >= inMm
      ? [['That is deeper than the layer they are sawn in: they run on into the one below.']]
      : []
  const fit: Inline[] =
    fitMm === undefined
      ? []
      : fitMm < 0
        ? [': tighter than the tang, so widen it']
        : [': the barbs of the tang hold in it']
  return [['Saw the slots ', fine(slotWidthMm), ' wide', ...deep, ...fit, '.'], ...through]
}
