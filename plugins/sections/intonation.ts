import type {BlockContent, RootContent} from 'mdast'
import type {Plan} from '../plan/plan.ts'
import {saddleRuler} from '../words/lengths.ts'
import {centsOff, inWords, number} from '../words/quantities.ts'
import {centsPlotted, centsTable, saddleFigures} from './intonation-figures.ts'
import {fold, type Inline, note, paragraph, strong} from './kit.ts'
import {table} from './kit-table.ts'
import {length, lengthAlone} from './measures.ts'
import type {Section, SectionInput} from './section.ts'

/** Where the saddle goes so that fretted notes are in tune, and what is left over; on a fretless neck, why nowhere else. */
export const intonation: Section = {
  name: 'intonation',
  title: 'Intonation',
  needs: (input) => (input.plan.intonation || isFretless(input) ? [] : missing(input)),
  content: (input) => {
    const {plan, build} = input
    if (!plan.intonation) return isFretless(input) ? noSetback(plan) : []
    const [answer, ...more] = saddleInWords(plan).map((said) => paragraph(...said))
    return [
      ...(answer ? [answer] : []),
      ...fold('Why there, each string by itself, and what is left over', [
        ...more,
        ...saddleTable(plan),
        ...saddleDoubts(plan, build.values.frets?.crown !== undefined).map((said) => note(...said)),
        ...centsPlotted(plan),
        ...saddleFigures(plan),
        ...centsTable(plan),
      ]),
    ]
  },
}

const isFretless = ({plan: {scale}}: SectionInput) => scale?.fretted === false && scale.lengthMm !== undefined

function missing({plan: {scale, strings, action}, build: {values}}: SectionInput): string[] {
  if (scale?.lengthMm === undefined) return ['scale.length']
  if (!scale.lines?.length) return ['scale.lines']
  if (!strings) return ['strings']
  if (!action) return [values.bridge?.height ? 'neck.above-top' : 'bridge.height']
  const at = strings.findIndex(
    ({stiffnessMpa, tensionN}) => stiffnessMpa === undefined || tensionN === undefined,
  )
  return [`strings.${at + 1}.${values.strings?.[at]?.gauge ? 'material' : 'gauge'}`]
}

/** Say where the bridge goes on a fretless neck, and why it is not set back. */
function noSetback(plan: Plan): RootContent[] {
  const bridgeMm = plan.bridge?.stationMm
  if (bridgeMm === undefined) return []
  return [
    paragraph(
      strong('The bridge goes on its line'),
      ', ',
      length(bridgeMm, plan),
      ' from the nut line, with no setback.',
    ),
    ...fold('Why', [
      paragraph(
        'A setback makes up for the stretch of a string that is pressed to a fret. Without frets the slide or the finger ',
        'stops the string wherever the note is, so there is nothing to make up for: the lines only show where to look.',
      ),
    ]),
  ]
}

/** Say in one sentence where the saddle goes against the scale length as drawn, and what a straight one leaves over. */
function saddleInWords(plan: Plan): Inline[][] {
  const {bridge, scale, strings = []} = plan
  const [alone] = bridge?.setbacks ?? []
  if (!bridge || !alone) return []
  const ruler = saddleRuler(plan)
  const {slantedSaddle: slanted, squareSaddle: square} = bridge
  const where: Inline[] = slanted
    ? [
        'Set a straight saddle back ',
        length(slanted.firstMm, ruler),
        ` at ${strings[0]?.name} and `,
        length(slanted.lastMm, ruler),
        ` at ${strings.at(-1)?.name}`,
      ]
    : ['Set the saddle back ', length(alone.setbackMm, ruler)]
  const worstCents = (slanted ?? alone).worstCents
  const noticeable = scale?.noticeableCents ?? 0
  const drawn = number(bridge.drawnWorstCents ?? alone.plainWorstCents, 1)
  return [
    [strong(...where), ' behind the bridge line.'],
    [
      'The bridge line lies ',
      length(bridge.stationMm, plan),
      ` from the nut line. So set back, no fret of the first twelve is more than ${centsOff(worstCents)} off; as drawn, with no setback, the worst would be ${drawn}.`,
    ],
    ...(square
      ? [
          [
            'Square to the neck, ',
            lengthAlone(square.firstMm, ruler),
            ` back leaves at most ${centsOff(square.worstCents)}; ears notice about ${number(noticeable, 0)}.`,
          ],
        ]
      : []),
    ...(worstCents > noticeable
      ? [
          [
            'Moving the nut towards the frets as well leaves less, as the figures below show; so does a lower nut.',
          ],
        ]
      : []),
  ]
}

/** List where each string would best end by itself, against what it would be off as drawn. */
function saddleTable(plan: Plan): BlockContent[] {
  const {setbacks = []} = plan.bridge ?? {}
  const ruler = saddleRuler(plan)
  return [
    table({
      caption: 'Where each string would best end, saddle alone',
      columns: [
        {head: 'String'},
        {head: 'Set back', align: 'right'},
        {head: 'From the nut line', align: 'right'},
        {head: 'Furthest off then', align: 'right'},
        {head: 'As drawn', align: 'right'},
      ],
      rows: setbacks.map(({name, setbackMm, stationMm, worstCents, plainWorstCents}) => [
        name,
        length(setbackMm, ruler),
        length(stationMm, ruler),
        centsOff(worstCents),
        centsOff(plainWorstCents),
      ]),
    }),
  ]
}

const soft = new Set(['nylon', 'gut', 'fluorocarbon'])

/** Say what the setbacks hang on that is only a usual value: stiffness, cores, the height of the crowns. */
function saddleDoubts(plan: Plan, hasCrown: boolean): Inline[][] {
  const {strings = [], action, bridge} = plan
  const {creepCents} = bridge ?? {}
  const slides = (bridge?.setbacks ?? []).flatMap(({name, slidingMm}, i): Inline[] =>
    slidingMm === undefined
      ? []
      : [...(i ? [', '] : []), lengthAlone(slidingMm, saddleRuler(plan)), ` at ${name}`],
  )
  const names = (which: (string: (typeof strings)[number]) => boolean) =>
    inWords(strings.filter(which).map(({name}) => name))
  const softNames = names(({stiffnessFrom = ''}) => soft.has(stiffnessFrom))
  const coredNames = names(({coreAssumed, stiffnessFrom}) => coreAssumed === true && stiffnessFrom !== 'file')
  return [
    ...(softNames
      ? [
          [
            `The stiffness of ${softNames} is only a usual one, 5 GPa, and such strings run from 3.4 to 8.3: let the saddle move until it is set by ear.`,
          ],
        ]
      : []),
    ...(coredNames
      ? [[`The core of ${coredNames} is assumed; a packet that tells it makes this surer.`]]
      : []),
    ...(action?.reliefFrom === 'bow' && action.reliefMm > 0
      ? [
          [
            'Reckoned with the strung heights, the neck hollow by as much as the strings are expected to bow it; a relief in the file counts instead.',
          ],
        ]
      : action?.reliefFrom === 'file'
        ? [['Reckoned with the strung heights and the relief that the file gives.']]
        : []),
    ...(creepCents === undefined || Math.abs(creepCents) < 0.05
      ? []
      : [
          [
            `In time, as neck and top give way, one of the first twelve frets comes to sound ${centsOff(creepCents)} ${creepCents > 0 ? 'sharper' : 'flatter'}, the others less, until the heights are set again.`,
          ],
        ]),
    ...(slides.length
      ? [
          [
            'The setbacks are those of strings that stick at nut and saddle; where they slide over them, what lies behind stretches as well, and they are ',
            ...slides,
            '.',
          ],
        ]
      : []),
    ...(!hasCrown && action
      ? [['The frets’ crowns are not given, so the bridge’s height is taken from the tops of the frets.']]
      : []),
  ]
}
