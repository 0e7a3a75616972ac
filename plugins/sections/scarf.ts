import type {RootContent} from 'mdast'
import type {Settled} from '../plan/kit/settled.ts'
import type {Plan} from '../plan/plan.ts'
import {angle, inWords, number} from '../words/quantities.ts'
import {sidesExplained} from '../words/sides.ts'
import {facts, figures, fold, holds, type Inline, paragraph, source} from './kit.ts'
import {table} from './kit-table.ts'
import {area, force, length, lengthAlone, offCentre} from './measures.ts'
import type {Section} from './section.ts'

/** How the head is sawn and glued, how thick it is for its tuners, and how each string runs to its post. */
export const scarf: Section = {
  name: 'scarf',
  title: 'Head and scarf',
  needs: ({plan}) => (plan.neck?.head ? [] : ['scale.length', 'head']),
  content: ({plan, build}) => {
    const [answer, ...sawing] = scarfInWords(plan)
    const [posts, numbers] = [postTable(plan), scarfFigures(plan)]
    const name = holds(
      ['sawing and gluing', plan.neck?.scarf ? sawing : []],
      ['thickness', ['always']],
      ['posts', posts],
      ['figures', numbers],
    )
    return [
      ...(answer ? [paragraph(...answer)] : []),
      ...fold(name, [
        ...[...sawing, ...stepsInWords(plan), ...headInWords(plan, build)].map((said) => paragraph(...said)),
        ...posts,
        ...numbers,
      ]),
    ]
  },
}

/** Say how the head is sawn and glued, for each way of making it. */
function scarfInWords(plan: Plan): Inline[][] {
  const {scarf, head} = plan.neck ?? {}
  if (!head) return []
  if (head.joint === 'straight')
    return [['The head runs on straight behind the nut: nothing is sawn at an angle.']]
  const ledge: Inline[] =
    head.ledgeMm > 0
      ? [
          'It starts ',
          lengthAlone(head.ledgeMm, plan),
          ' behind the nut line; until there the face stays flat.',
        ]
      : ['It starts at the nut line.']
  if (!scarf)
    return [
      [`Saw the head out of the solid, leaning back ${angle(head.angleDeg)}.`],
      ['The grain runs out of it: glue a plate on its face, or handle it gently. ', ...ledge],
    ]
  const isPart = plan.neck!.layup?.layers.some(({beforeScarf}) => !beforeScarf)
  return [
    [
      `Saw the scarf at ${angle(scarf.angleDeg)} to the stick, through `,
      length(scarf.thicknessMm, plan),
      isPart ? ': what is glued on after the scarf is not there yet.' : '.',
    ],
    [
      `Few mitre gauges turn to ${angle(scarf.fromSquareDeg)} from square: saw it in a jig that holds the stick at the slope, or by hand to a line on both edges. The sawn face is `,
      length(scarf.faceMm, plan),
      ' long and runs ',
      lengthAlone(scarf.runMm, plan),
      ` along the stick, 1 in ${number(scarf.slope, 1)}. `,
      ...ledge,
    ],
    [
      'Turn the piece that was sawn off over and lay it under the neck’s end, so that both sawn slopes lie in one plane; plane them together. Then glue its slope to the back of the neck: the neck’s own slope is now the first ',
      lengthAlone(scarf.faceMm, plan),
      ' of the head’s face.',
    ],
  ]
}

/** Say where the face steps down behind the nut, and which strings touch its edge. */
function stepsInWords(plan: Plan): Inline[][] {
  const {head, overEdge = []} = plan.neck ?? {}
  if (!head) return []
  const steps = head.steps.filter(({downMm}) => downMm > 0)
  const names = inWords(overEdge.map(({string}) => plan.strings?.[string]?.name ?? `string ${string + 1}`))
  return [
    ...(steps.length > 0
      ? [
          steps.flatMap(({alongMm, downMm}, i): Inline[] => [
            i > 0 ? ', and another ' : 'Behind the nut the face steps down ',
            lengthAlone(downMm, plan),
            ...(alongMm > 0 ? [' at ', lengthAlone(alongMm, plan), ' from its line'] : [' at its line']),
            ...(i === steps.length - 1 ? ['. The strings’ angles count from there down.'] : []),
          ]),
        ]
      : []),
    ...(overEdge.length > 0
      ? [
          [
            overEdge.length > 1
              ? `On the way to their posts ${names} touch the edge of the face, `
              : `On the way to its post ${names} touches the edge of the face, `,
            lengthAlone(overEdge[0]!.atMm, plan),
            ` behind the nut, and ${overEdge.length > 1 ? 'turn' : 'turns'} there once more: round it.`,
          ],
        ]
      : []),
  ]
}

/** Say how thick the head is and may be for its tuners, how their holes are drilled, and what holds the strings down. */
function headInWords(plan: Plan, {values}: Settled): Inline[][] {
  const {head} = plan.neck ?? {}
  if (!head) return []
  const {thicknessMm, leastMm, mostMm, retainer} = head
  const fits: Inline[] =
    leastMm === undefined || mostMm === undefined
      ? ['.']
      : [
          '; tuners with a post through the head fit one of ',
          lengthAlone(leastMm, plan),
          ' to ',
          lengthAlone(mostMm, plan),
          '.',
        ]
  const hole = values.tuners?.['post-hole']
  return [
    ['The head is ', length(thicknessMm, plan), ' thick', ...fits],
    ...(hole
      ? [
          [
            'Drill each post hole in two steps: ',
            lengthAlone(head.pilotMm ?? 0, plan),
            ' right through from the face, square to it, then ',
            lengthAlone(hole.mm, plan),
            ' from both faces to meet in the middle, so that neither face breaks out.',
          ],
        ]
      : []),
    ...(retainer
      ? [
          [
            `A ${retainer === 'bar' ? 'bar across the strings' : 'screw'} behind the nut holds the strings down in their slots.`,
          ],
        ]
      : []),
  ]
}

/** List each string's post and the angle at which the string goes down to it behind the nut. */
function postTable(plan: Plan): RootContent[] {
  const {tuners, neck} = plan
  if (!tuners) return []
  const angles = neck?.stringAngleDeg
  return [
    table({
      caption: 'Posts, along the head’s own face, and how the strings go down to them',
      columns: [
        {head: 'String'},
        {head: 'Behind the nut line', align: 'right'},
        {head: 'Off the centre line', align: 'right'},
        ...(angles ? [{head: 'Goes down at', align: 'right' as const}] : []),
      ],
      rows: tuners.map(({name, stationMm, offMm}, i) => [
        name ?? `${i + 1}`,
        length(-stationMm, plan),
        offCentre(offMm, plan),
        ...(angles ? [angle(angles[i] ?? 0)] : []),
      ]),
      note: sidesExplained(plan),
    }),
  ]
}

/** Fold away what is glued at the scarf and what the strings ask of it. */
function scarfFigures(plan: Plan): RootContent[] {
  const {scarf} = plan.neck ?? {}
  if (!scarf) return []
  const {glueAreaMm2, glueForceN, glueStressMpa, slope} = scarf
  const pull =
    glueForceN === undefined || glueStressMpa === undefined
      ? []
      : ([
          ['The strings’ pull along it', force(glueForceN, plan)],
          ['Shear in the glue line', `${number(glueStressMpa, 2)} MPa`],
        ] as const)
  return [
    figures('Figures of the scarf', [
      facts([['Glued', area(glueAreaMm2, plan)], ['Slope', `1 in ${number(slope, 1)}`], ...pull]),
      source(
        'face t/sin θ and run t/tan θ by trigonometry. A joint as strong as the wood would be ten times as long as it is deep (Wood Handbook, FPL-GTR-190, ch. 10); a head’s is less than half of that, so its load has to stay low, and a plate or fingerboard over it carries a part',
      ),
    ]),
  ]
}
