import {randomBytes} from 'node:crypto'
import type {ServerResponse} from 'node:http'

/** The address at which a page waits for its own change. */
export const changesPath = '/~changes'

/**
 * Tells open pages when they have changed. What a page was loaded from is counted and not timed: a clock that is turned,
 * and a browser's that stood still while the machine slept, would load a page anew without end, or not at all.
 */
export class Changes {
  readonly #run = randomBytes(4).toString('hex')
  readonly #changed = new Map<string, number>()
  readonly #waiting = new Map<ServerResponse, string>()
  #count = 0

  /** What the pages show that are answered from now on; goes with each, and comes back when it waits. */
  state(): string {
    return `${this.#run}-${this.#count}`
  }

  /** Keep a page's connection open until its address shows another thing than in the `state` that it was loaded in. */
  wait(response: ServerResponse, address: string, state: string): void {
    response.writeHead(200, {'Content-Type': 'text/event-stream', 'Cache-Control': 'no-store'})
    response.write(': waiting\n\n')
    this.#waiting.set(response, address)
    response.on('close', () => this.#waiting.delete(response))
    // Where a browser does not tell the state, the page is as it is now.
    const [run, count] = (state || this.state()).split('-')
    if (run !== this.#run || (this.#changed.get(address) ?? 0) > Number(count)) tell(response)
  }

  /** Tell the pages at these addresses that they have changed. */
  announce(addresses: readonly string[]): void {
    this.#count++
    for (const address of addresses) this.#changed.set(address, this.#count)
    for (const [response, address] of this.#waiting) if (addresses.includes(address)) tell(response)
  }
}

function tell(response: ServerResponse): void {
  response.write('data: changed\n\n')
}
