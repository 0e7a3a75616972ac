import type {UsualKind} from '../../tables/usual-kinds.ts'
import {journalSchema} from '../schema/schema.ts'

/** What a new build is given besides its kind; sizes as a maker writes them, in `units`. */
interface NewBuildOptions {
  title: string
  scale?: string
  units?: 'in' | 'mm'
}

/** Write a new build file of a usual kind: few keys, each with a comment that teaches, and a first day to fill in. */
export function newBuild(kind: UsualKind, {title, scale, units = 'in'}: NewBuildOptions): string {
  const pick = ([inches, mm]: readonly [string, string]) => (units === 'in' ? inches : mm)
  const gauge = (written: string) =>
    units === 'in' ? written : `${written.replace(/w$/, '')} in${written.endsWith('w') ? ' w' : ''}`
  const strings = kind.strings.map(([note, size, material]) =>
    material
      ? `  - {note: ${note}, gauge: ${gauge(size)}, material: ${material}}`
      : `  - ${note} ${gauge(size)}`,
  )
  const lines = [
    `title: ${JSON.stringify(title)}`,
    '# summary: One sentence for the portfolio.',
    'status: idea                    # then: on the bench, strung up',
    `units: ${units}                       # what a bare number means: in or mm`,
    ...(kind.handed
      ? [`handed: ${kind.handed}                    # mirrors drawings and templates; no number changes`]
      : []),
    `play: ${kind.play}                   # slide, fingers or both: sets usual heights and pull`,
    '# started: 2026-03-07           # the first day at the bench',
    '',
    '# Measure your own box and neck; everything else follows from these lines.',
    `box: ${pick(kind.box)}          # outside: along the neck x across it x depth, lid and back included`,
    `neck: ${pick(kind.neck)}               # width x thickness`,
    '',
    'scale:',
    `  length: ${scale ?? pick(kind.scale)}                # nut line to bridge line`,
    `  fretted: ${kind.fretted}                # true: wire in slots; false: marks only`,
    ...(kind.pattern ? [`  pattern: ${kind.pattern}             # only the notes of one scale`] : []),
    ...(kind.fretted
      ? [
          'frets: {wire-width: 2.0 mm, crown: 0.94 mm, tang: 0.5 mm, tang-depth: 1.6 mm, saw-kerf: 0.58 mm}  # measure your wire and saw',
        ]
      : []),
    '',
    "strings:                        # from the player's bass side: note and gauge, with w where it is wound",
    ...strings,
    '',
    '# What is left out is assumed where the trade has a usual value; the page lists each one.',
    '# More that can be said: nut, bridge, action, spacing, head, tuners, anchors, screws, pickup, finish, stock.',
    '# measured: {on: 2026-03-15, scale.length: …}   # what was really made',
    '# played: [{on: 2026-03-16, again: yes}]        # yes, with changes or no',
  ]
  return `---\n${lines.map((line) => line.trimEnd()).join('\n')}\n---\n\nWhat is this one for, and what should it do better than the last?\n\n<!-- A heading that starts with a date begins a day; its hours may stand in brackets:\n## 2026-03-07 Milling the strips (1 h 30 min) -->\n`
}

/** What each key of `journal.yaml` may hold, to be filled in. */
const examples: Readonly<Record<keyof typeof journalSchema.fields, string>> = {
  title: 'The loft by the quay',
  maker: 'the loft by the quay',
  currency: 'EUR',
  units: 'in',
  ruler: '1/32',
  saw: '{kerf: 1/8, trim: 1/2, plane: 1/16}',
  day: '3 h',
  rate: '20',
  'show-money': 'true',
  site: 'https://journal.example/',
  ask: 'loft@journal.example',
}

/** Write the settings of a new journal: every key with what it means, none of them set. */
export function newJournal(): string {
  const keys = Object.entries(journalSchema.fields).map(([key, {says}]) => {
    const line = `# ${key}: ${examples[key as keyof typeof examples]}`
    return `${line.padEnd(44)} # ${says}`
  })
  return `# ${journalSchema.says} Take off the first # of those that you want.\n${keys.join('\n')}\n`
}
