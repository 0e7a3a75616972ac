import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {Settled} from '../part.ts'
import type {Plan} from '../shape/plan.ts'
import type {BillRow} from '../shape/work.ts'

/** Something to get, before it is known what it cost; `isCalled` knows it by what a cost list would call it. */
export type Needed = Omit<BillRow, 'each' | 'total'> & {isCalled: (item: string) => boolean}

/** List the hardware that the design asks for, counted: tuners, anchors, screws, fret wire, rods, wiring, extras. */
export function impliedItems({values, units}: Settled, plan: Plan): Needed[] {
  const {tuners, anchors, screws, nut, bridge, pickup, extras, head} = values
  const strings = values.strings?.length ?? 0
  const size = (mm: number) => writeLength(mm, {units, rulerMm: units === 'in' ? 25.4 / 64 : 0.1})
  const need = (item: string, count: number, from: string, word: RegExp): Needed[] =>
    count > 0 ? [{item, count, from, isCalled: (listed) => word.test(listed)}] : []
  const rod = (of: 'nut' | 'bridge', kind: string | undefined, diameterMm?: number) =>
    kind === 'rod' || kind === 'bolt'
      ? need(
          `${kind} for the ${of}${diameterMm ? `, ${size(diameterMm)}` : ''}`,
          1,
          of,
          kind === 'rod' ? /\brods?\b/i : /\bbolts?\b/i,
        )
      : []
  const anchor = anchors?.kind?.value
  const wireMm = plan.neck?.fretting?.wireMm
  return [
    ...need('tuners', tuners ? strings : 0, 'tuners', /tuner|machine head/i),
    ...need('ferrules', anchor === 'ferrule' ? strings : 0, 'anchors', /ferrule/i),
    ...need('pins', anchor === 'pins' ? strings : 0, 'anchors', /\bpins?\b/i),
    ...need('tailpiece', anchor === 'tailpiece' ? 1 : 0, 'anchors', /tailpiece/i),
    ...(screws ?? []).flatMap((row, i) =>
      need(
        `screws, no. ${row.size?.value ?? '?'}${row.length ? ` × ${size(row.length.mm)}` : ''}`,
        screwCount(plan, i),
        `screws.${i + 1}`,
        /screw/i,
      ),
    ),
    ...rod('nut', nut?.kind?.value, nut?.diameter?.mm),
    ...rod('bridge', bridge?.kind?.value),
    ...need('retainer screw', head?.retainer?.value === 'screw' ? 1 : 0, 'head.retainer', /retainer/i),
    ...need(
      `fret wire, ${wireMm === undefined ? '' : size(wireMm)} in all`,
      wireMm === undefined ? 0 : 1,
      'frets',
      /fret ?wire/i,
    ),
    ...need(
      `${pickup?.kind?.value ?? ''} pickup`.trim(),
      pickup ? 1 : 0,
      'pickup',
      /pickup|piezo|disc|coil|microphone/i,
    ),
    ...need('jack', pickup?.jack ? 1 : 0, 'pickup.jack', /\bjack/i),
    ...(extras ?? []).map(({value}, i): Needed => {
      const isCalled = (listed: string) => listed.toLowerCase().includes(value.toLowerCase())
      return {item: value, count: 1, from: `extras.${i + 1}`, isCalled}
    }),
  ]
}

function screwCount({screws}: Plan, row: number): number {
  return screws?.filter(({of}) => of === `screws.${row + 1}`).length ?? 0
}
