import {settingsFiles} from '../journal/settings.ts'
import type {Again, PlannedSite} from '../make/plan-site.ts'

/** A build that was planned again by itself, and is shown so. */
export interface ShownAlone extends Again {
  /** All else is as it was planned there; undefined where it is known by name alone. */
  from: PlannedSite | undefined
}

/** How far the site is with what was saved last: whoever asks for a page waits for that part of it. */
export class Stage {
  /** The builds that changed are shown, or all is planned: any other can be asked for. */
  readonly builds: Promise<void>
  areBuildsReady = false
  /** The pages of the whole journal show it. */
  readonly journal: Promise<void>
  /** No more than builds changed: any of them can be planned again with all else as it was. */
  readonly isOfBuilds: boolean
  /** Builds (slugs) that are shown by themselves, as they were saved last. */
  readonly shown = new Map<string, Promise<ShownAlone | undefined>>()
  #buildsReady = () => {}
  #journalReady = () => {}

  /** `changed` are paths in `builds/`. */
  constructor(changed: readonly string[] = []) {
    this.isOfBuilds = !changed.some((path) => settingsFiles.includes(path))
    this.builds = new Promise((resolve) => {
      this.#buildsReady = () => {
        this.areBuildsReady = true
        resolve()
      }
    })
    this.journal = new Promise((resolve) => {
      this.#journalReady = resolve
    })
  }

  showBuilds(): void {
    this.#buildsReady()
  }

  showJournal(): void {
    this.#buildsReady()
    this.#journalReady()
  }
}
