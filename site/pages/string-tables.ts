import {
  musicWire,
  musicWireFit,
  musicWireSource,
  musicWireStiffness,
} from '../../plugins/tables/music-wire.ts'
import {
  breakLimits,
  type StringMaterialRow,
  stringMaterials,
  stringPulls,
  stringWraps,
  usualCores,
} from '../../plugins/tables/strings.ts'
import {number} from '../../plugins/words/quantities.ts'
import {noSource, right, type SourceTable} from './source-tables.ts'

/** The tables that strings are computed from. */
export const stringTables: readonly SourceTable[] = [
  {
    title: 'Strength of music wire',
    source: `${musicWireSource}. Between rows a straight line; outside them ${musicWireFit.aMpa}/d^${musicWireFit.exponent} MPa, d in mm (Shigley’s Mechanical Engineering Design, Table 10-4). Stiffness ${number(musicWireStiffness.thinMpa / 1000, 1)} GPa up to ${musicWireStiffness.thinUpToIn} in, ${number(musicWireStiffness.thickMpa / 1000, 0)} GPa above (the same book, Table 10-5).`,
    table: {
      caption: 'Tensile strength by diameter, in thousands of pounds per square inch',
      columns: [right('Diameter, in'), right('At least'), right('At most')],
      rows: musicWire.map(({diameterIn, minKsi, maxKsi}) => [
        diameterIn.toFixed(3),
        String(minKsi),
        String(maxKsi),
      ]),
    },
  },
  {
    title: 'What strings are made of',
    table: {
      caption: 'Density and stiffness',
      columns: [
        {head: 'Material'},
        right('Density, kg/m³'),
        {head: 'Source'},
        right('Stiffness, GPa'),
        {head: 'Source'},
      ],
      rows: (Object.entries(stringMaterials) as [string, StringMaterialRow][]).map(([name, row]) => [
        name,
        String(row.densityKgM3),
        row.densitySource,
        row.stiffnessMpa === undefined ? '' : number(row.stiffnessMpa / 1000, 1),
        row.stiffnessSource ?? '',
      ]),
    },
  },
  {
    title: 'What strings are wound with',
    table: {
      caption: 'Density of the wrap',
      columns: [{head: 'Wrap'}, right('Density, kg/m³'), {head: 'Source'}],
      rows: Object.entries(stringWraps).map(([name, {densityKgM3, source}]) => [
        name,
        String(densityKgM3),
        source,
      ]),
    },
  },
  {
    title: 'The core of a wound string',
    source: noSource,
    table: {
      caption: 'Taken where a build file gives none; between rows in a straight line',
      columns: [right('Gauge, in'), right('Core, part of the gauge')],
      rows: usualCores.map(({gaugeIn, coreFraction}) => [gaugeIn.toFixed(3), coreFraction.toFixed(2)]),
    },
  },
  {
    title: 'How hard strings pull',
    source: `${noSource}. Plain steel at ${breakLimits.near} of its strength wears sooner, at ${breakLimits.nearer} it seldom lasts, at ${breakLimits.broken} it does not reach its note; the wire’s elastic limit lies at 0.65 to 0.75 (Shigley’s Mechanical Engineering Design, Table 10-5).`,
    table: {
      caption: 'In newtons, a string; stiff is what pulls harder than firm',
      columns: [
        {head: 'Strings'},
        right('Slack under'),
        right('Slack under a slide'),
        right('Easy up to'),
        right('Firm up to'),
      ],
      rows: Object.entries(stringPulls).map(([name, row]) => [
        name,
        String(row.slackN),
        String(row.slackUnderSlideN),
        String(row.easyN),
        String(row.firmN),
      ]),
    },
  },
]
