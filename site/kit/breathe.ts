import {setImmediate as turn} from 'node:timers/promises'

/** Nobody notices so short a wait, ms. */
const breathMs = 10
let lastMs = 0

/**
 * Let whoever waits in, now and then. Files are read and looked at one call after the other, which costs a tenth of what
 * it costs to wait for each; without a breath between them nothing else would come to its turn meanwhile.
 */
export async function breathe(): Promise<void> {
  if (performance.now() - lastMs < breathMs) return
  await turn()
  lastMs = performance.now()
}
