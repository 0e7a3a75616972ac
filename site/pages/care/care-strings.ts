import type {ElementContent} from 'hast'
import {h} from 'hastscript'
import {toElements} from '../../../plugins/sections/kit/to-elements.ts'
import {length, table} from '../../../plugins/sections/kit.ts'
import type {SiteBuild} from '../../site-data.ts'

/** Say what to tune to, and exactly which strings to buy. */
export function careStrings({plan}: SiteBuild): ElementContent[] {
  const strings = plan.strings ?? []
  if (strings.length === 0) return []
  const strung = table({
    caption: 'From the player’s bass side; buy single strings of these gauges',
    columns: [
      {head: 'Tune to'},
      {head: 'Gauge'},
      {head: 'Made of'},
      {head: 'End'},
      {head: 'At least this long'},
    ],
    rows: strings.map(({name, gauge, wound, material, wrap, ends, lengthNeededMm}) => [
      name,
      gauge ?? '',
      wound ? `wound, ${wrap ?? 'any wrap'}` : material ? `plain ${material}` : '',
      ends ? `${ends} end` : '',
      // Rounded up: a string that is a little long is cut, one that is short is lost.
      lengthNeededMm === undefined ? '' : length(lengthNeededMm, plan, 'up'),
    ]),
  })
  return [h('h2', 'Strings'), ...toElements([strung])]
}
