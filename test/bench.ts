import {readdirSync} from 'node:fs'

/** What was measured against what, as a ratio within one run. */
export interface Measure {
  name: string
  ratio: number
  detail: string
}

// Every file of test/bench measures one thing against another in the same run: ratios survive a change of machine.
for (const file of readdirSync(new URL('bench/', import.meta.url)).sort()) {
  const {bench} = (await import(new URL(`bench/${file}`, import.meta.url).href)) as {
    bench: () => Promise<Measure[]>
  }
  for (const {name, ratio, detail} of await bench())
    console.log(`${name}: ${ratio.toPrecision(3)} (${detail})`)
}
