import type {placedAsWritten as Placed} from '../../plugins/build-file/heal/as-written.ts'
import type {healSlips as Slips} from '../../plugins/build-file/heal/heal.ts'
import type {healYaml as Yaml} from '../../plugins/build-file/heal/yaml-lines.ts'
import type {checks as Checks} from '../../plugins/checks/checks.ts'

// The page draws what it can read before it knows what would not work: that comes a moment later, for all changes. The
// reader of a build file finds its healing here (try-scripts.ts) instead of in the files of these names.

let later: typeof import('./later-parts.ts') | undefined

/** Fetch the checks, and what slips were meant to be. */
export async function fetchLater(): Promise<void> {
  later = await import('./later-parts.ts')
}

export const checks = ((build, plan) => later?.checks(build, plan) ?? []) as typeof Checks
export const healSlips: typeof Slips = (healing) => later?.healSlips(healing)
export const healYaml: typeof Yaml = (...given) => later?.healYaml(...given)
export const placedAsWritten: typeof Placed = (...given) => later!.placedAsWritten(...given)
