import type {Settled} from '../part.ts'
import type {Plan} from '../shape/plan.ts'
import type {Measure} from './measure.ts'
import {plannedAt} from './planned-at.ts'

/** List what was measured, each beside what was drawn for it, where that is known; as the file groups them. */
export function measures({values}: Settled, plan: Plan): Measure[] {
  const {measured} = values
  if (!measured) return []
  const line = (label: string) => plan.scale?.lines?.find((one) => one.label === label)
  return [
    ...measured.paths.flatMap(({path, value}): Measure[] => {
      const planned = known(plannedAt(path, values, plan))
      const {mm, deg} = value as {mm?: number; deg?: number}
      if (mm !== undefined) return [{path, measured: mm, unit: 'mm', ...planned}]
      return deg === undefined ? [] : [{path, measured: deg, unit: 'deg', ...planned}]
    }),
    ...measured.lines.map(
      ({label, value}): Measure => ({
        path: `lines.${label}`,
        measured: value.mm,
        unit: 'mm',
        ...known(line(label)?.fromNutMm),
      }),
    ),
    ...measured.cents.map(
      ({label, value}): Measure => ({
        path: `cents.${label}`,
        measured: value.value,
        unit: 'cents',
        // A tuner counts from equal semitones.
        ...known(line(label) && (line(label)!.offEqualCents ?? 0)),
      }),
    ),
    ...measured.tensions.map(
      ({name, value}): Measure => ({
        path: `strings.${name}.tension`,
        measured: value.n,
        unit: 'N',
        ...known(plan.strings?.find((one) => one.name === name)?.tensionN),
      }),
    ),
    ...(measured.resonance
      ? [
          {
            path: 'resonance',
            measured: measured.resonance.value,
            unit: 'Hz' as const,
            ...known(plan.box?.resonanceHz),
          },
        ]
      : []),
  ]
}

const known = (planned: number | undefined) => (planned === undefined ? {} : {planned})
