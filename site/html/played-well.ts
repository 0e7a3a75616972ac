import type {BuildValues} from '../../plugins/build-file/schema.ts'

/** Whether a build played well: its last note from playing says that it would be built again as it is. */
export function playedWell({played}: BuildValues): boolean {
  return played?.at(-1)?.again?.value === 'yes'
}
