import type {ServerResponse} from 'node:http'

/** The address at which a page waits for its own change. */
export const changesPath = '/~changes'

/** Tells open pages when they have changed. */
export class Changes {
  readonly #changedMs = new Map<string, number>()
  readonly #waiting = new Map<ServerResponse, string>()
  readonly #startedMs = Date.now()

  /** Keep a page's connection open until its address changes after `sinceMs`, when it was loaded. */
  wait(response: ServerResponse, address: string, sinceMs: number): void {
    response.writeHead(200, {'Content-Type': 'text/event-stream', 'Cache-Control': 'no-store'})
    response.write(': waiting\n\n')
    this.#waiting.set(response, address)
    response.on('close', () => this.#waiting.delete(response))
    if ((this.#changedMs.get(address) ?? this.#startedMs) > sinceMs) tell(response)
  }

  /** Tell the pages at these addresses that they have changed. */
  announce(addresses: readonly string[]): void {
    const now = Date.now()
    for (const address of addresses) this.#changedMs.set(address, now)
    for (const [response, address] of this.#waiting) if (addresses.includes(address)) tell(response)
  }
}

function tell(response: ServerResponse): void {
  response.write('data: changed\n\n')
}
