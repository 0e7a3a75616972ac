import type {placedAsWritten as Placed} from '../../plugins/build-file/heal/as-written.ts'
import type {healSlips as Slips} from '../../plugins/build-file/heal/heal.ts'
import type {choicesFor as Choices} from '../../plugins/build-file/heal/keys.ts'
import type {healYaml as Yaml} from '../../plugins/build-file/heal/yaml-lines.ts'
import type {slipInWords as InWords} from '../../plugins/build-file/yaml/yaml-words.ts'
import type {checks as Checks} from '../../plugins/checks/checks.ts'

// The page draws what it can read before it knows what would not work: that comes a moment later, for all changes; and
// what a slip was meant to be once there is one. The reader of a build file finds its healing here (try-scripts.ts)
// instead of in the files of these names.

let judging: typeof import('./later-checks.ts') | undefined
let healing: typeof import('./later-healing.ts') | undefined

/** Fetch the checks. */
export async function fetchChecks(): Promise<void> {
  judging = await import('./later-checks.ts')
}

/** Fetch what slips were meant to be. */
export async function fetchHealing(): Promise<void> {
  healing = await import('./later-healing.ts')
}

export const checks = ((build, plan) => judging?.checks(build, plan) ?? []) as typeof Checks
export const healSlips: typeof Slips = (...given) => healing?.healSlips(...given)
export const healYaml: typeof Yaml = (...given) => healing?.healYaml(...given)
export const placedAsWritten: typeof Placed = (...given) => healing!.placedAsWritten(...given)
export const choicesFor: typeof Choices = (said, of) =>
  healing?.choicesFor(said, of) ?? of.filter((one) => one === said)
export const slipInWords: typeof InWords = (slip) => healing?.slipInWords(slip) ?? 'this line is no YAML'
