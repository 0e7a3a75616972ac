/** How far the site is with what was saved last: whoever asks for a page waits for that part of it. */
export class Stage {
  /** The builds that changed are shown, or all is planned: any other can be asked for. */
  readonly builds: Promise<void>
  /** The pages of the whole journal show it. */
  readonly journal: Promise<void>
  #buildsReady = () => {}
  #journalReady = () => {}

  constructor() {
    this.builds = new Promise((resolve) => {
      this.#buildsReady = resolve
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
