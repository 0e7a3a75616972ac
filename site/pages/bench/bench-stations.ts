import type {Element} from 'hast'
import {h} from 'hastscript'
import type {Plan} from '../../../plugins/plan/shape/plan.ts'
import type {Step} from '../../../plugins/plan/shape/work.ts'
import {withFractions} from '../../html/measures.ts'
import {bare} from './bare.ts'
import {boxToTick} from './box-to-tick.ts'

type Station = Step['stations'][number]

/** List a step's places, each with its box: lines by their number, holes under their face, bit and what they are for. */
export function benchStations({id, stations}: Step, plan: Plan): Element[] {
  const groups = new Map<string, Station[]>()
  for (const station of stations) {
    const of = groupOf(station)
    groups.set(of, [...(groups.get(of) ?? []), station])
  }
  return [...groups].map(([of, places]) =>
    h(of ? 'div.places.holes' : 'div.places', [
      ...(of ? [h('em', withFractions(`${of}: `))] : []),
      h(
        'ul',
        places.flatMap((place) => [
          h('li', [boxToTick(`${id} ${keyOf(place)}`, words(place, of !== '', plan))]),
          ' ',
        ]),
      ),
    ]),
  )
}

/** Holes of one face, bit and kind stand together: `neck back, 5/16 in, ferrule`. */
function groupOf({what, face, bit}: Station): string {
  if (bit === undefined) return ''
  const kind = what.replace(/^screw, (\w+).*$/, '$1').replace(/,.*$/, '')
  return [face, bit.replace(/ (brad-point )?bit$/, ''), kind].filter(Boolean).join(', ')
}

const keyOf = ({what, stationMm, offMm = 0, bit = ''}: Station) =>
  `${what} ${stationMm.toFixed(2)} ${offMm.toFixed(2)} ${bit}`.trim()

function words({what, stationMm, offMm, depthMm}: Station, isGrouped: boolean, plan: Plan) {
  const name = isGrouped ? (/^screw/.test(what) ? '' : (what.split(', ')[1] ?? '')) : shortName(what)
  return [
    name && `${name}: `,
    h('strong', bare(stationMm, plan)),
    ...(offMm ? [' off ', ...bare(offMm, plan)] : []),
    ...(depthMm === undefined ? [] : [' deep ', ...bare(depthMm, plan, 'down')]),
  ]
}

const shortName = (what: string) => what.replace(/^(line|fret|round-over) /, '').replace(/, dot$/, ' dot')
