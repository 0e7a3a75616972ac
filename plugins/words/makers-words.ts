import type {Build} from '../build-file/schema/build.ts'
import {textAt} from '../build-file/schema/path.ts'
import type {Plan} from '../plan/plan.ts'
import {openChord} from '../plan/strings/tunings.ts'
import {otherWords} from '../tables/other-names.ts'
import {treeOf} from '../tables/wood-colours.ts'

/** Gather what makers call an instrument by, beyond the words of its file: `fretless`, `open G`, `cedar`. */
export function makersWords({plan, build}: {plan: Plan; build: Pick<Build, 'values'>}): string {
  const {values} = build
  const count = plan.strings?.length
  const chord = openChord(values)
  const kinds = [plan.status, plan.play, textAt(values, 'neck.joins')].flatMap((kind) =>
    kind ? [kind, ...(otherWords[kind] ?? [])] : [],
  )
  const woods = [
    values.box?.wood?.value,
    values.box?.top?.wood?.value,
    ...(plan.neck?.layup?.layers ?? []).map(({wood}) => wood),
  ].flatMap((wood) => (wood ? [wood, treeOf(wood) ?? ''] : []))
  return [
    plan.scale && (plan.scale.fretted ? 'fretted frets' : 'fretless unfretted no frets'),
    count && `${count}-string`,
    plan.handed === 'left' ? 'left-handed lefty' : 'right-handed',
    chord && `open-${chord}`,
    ...kinds,
    ...woods,
  ]
    .filter(Boolean)
    .join(' ')
}
