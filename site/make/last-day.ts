import type {Build} from '../../plugins/build-file/build.ts'

/** Find the last date that the builds of a journal carry: the day that "today" means on the rack's page. */
export function lastDay(builds: readonly Build[]): string | undefined {
  const days = builds.flatMap(({values, days: entries}) => [
    values.started?.iso,
    values.finished?.iso,
    values.measured?.on?.iso,
    ...(values.played ?? []).map(({on}) => on?.iso),
    ...entries.map(({iso}) => iso),
  ])
  return days
    .filter((day) => day !== undefined)
    .sort()
    .at(-1)
}
