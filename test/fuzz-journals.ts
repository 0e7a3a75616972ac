import {execFileSync} from 'node:child_process'
import {chmodSync, cpSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import sharp from 'sharp'
import {cacheAt, secret, whatIsWrong} from './support/journal-holds.ts'
import {drawFrom, listing, mutateJournal} from './support/mutate-journal.ts'

// Run by test/fuzz.ts in a process of its own, which it ends where one journal takes too long: whole journals with
// files, folders, pictures, links and settings harmed at random. Prints the seed of each that a fault was found in.

const [seed = 1, seconds = 60, most = Number.POSITIVE_INFINITY] = process.argv.slice(2).map(Number)
const until = Date.now() + seconds * 1000

// Rights mean nothing to root.
if (process.getuid?.() === 0) {
  process.setegid!(65_534)
  process.seteuid!(65_534)
}
const home = mkdtempSync(join(tmpdir(), 'fuzz-'))
const folder = join(home, 'whole')
const cache = cacheAt(join(home, 'cache'))

/** A sound journal with something of everything, and a secret beside it. */
async function wholeJournal(): Promise<void> {
  cpSync('builds', join(folder, 'builds'), {recursive: true})
  const slipway = join(folder, 'builds/slipway')
  mkdirSync(join(slipway, 'photos'), {recursive: true})
  const image = sharp({create: {width: 60, height: 40, channels: 3, background: '#987'}})
  for (const format of ['jpeg', 'png', 'webp', 'gif'] as const)
    writeFileSync(join(slipway, `photos/front.${format}`), await image.clone().toFormat(format).toBuffer())
  const svg =
    '<svg xmlns="http://www.w3.org/2000/svg" width="30" height="20"><rect width="9" height="9"/></svg>'
  writeFileSync(join(slipway, 'plan.svg'), svg)
  writeFileSync(join(slipway, 'song.mp3'), 'A song.')
  const shown = readdirSync(join(slipway, 'photos')).map((name) => `![A view](photos/${name})\n`)
  writeFileSync(
    join(slipway, 'index.md'),
    `---\ntitle: Slipway\nbox: 10 1/8 x 7 x 2\nscale: 24 1/4\nstrings: [D3 .030w, A3 .020w, D4 .013]\ncover: photos/front.jpeg\nrecordings: [{file: song.mp3, says: A song}]\nbased-on: left-bank\nstarted: 2026-03-07\ntake: [A1]\n---\n## 2026-03-07 Milling (1 h)\n\n${shown.join('\n')}\n![A plan](plan.svg) [before](../left-bank.md)\n`,
  )
  writeFileSync(
    join(folder, 'builds/coal-quay.md'),
    '---\ntitle: Coal quay\npublish: false\nbox: 9 x 6 x 2\nbased-on: slipway\n---\nA draft.\n',
  )
  writeFileSync(join(folder, 'secret.txt'), secret)
}

await wholeJournal()
let [tried, bad] = [0, 0]
for (let at = seed; Date.now() < until && tried < most; at++, tried++) {
  process.send?.({seed: at, tried})
  const root = join(home, `journal-${at}`)
  cpSync(folder, root, {recursive: true})
  mutateJournal(join(root, 'builds'), drawFrom(at))
  const found = await whatIsWrong(root, cache, at % 10 === 0)
  if (found.length > 0) {
    bad++
    console.log(
      `journal ${at}:\n  ${[...new Set(found)].slice(0, 5).join('\n  ')}\n  ${listing(root).length} files`,
    )
  }
  execFileSync('chmod', ['-R', 'u+rwx', root])
  rmSync(root, {recursive: true, force: true})
  if (at % 50 === 0) await cache.tidy()
  if (tried % 100 === 99) console.log(`${tried + 1} journals tried`)
}
chmodSync(home, 0o700)
rmSync(home, {recursive: true, force: true})
console.log(`${tried} journals tried, ${bad} of them bad`)
process.exitCode = bad > 0 ? 1 : 0
