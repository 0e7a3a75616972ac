import {createHash} from 'node:crypto'
import {readdir, readFile} from 'node:fs/promises'
import {join} from 'node:path'
import {fileURLToPath} from 'node:url'

const home = fileURLToPath(new URL('../..', import.meta.url))

/** Name the program by all that its results come from: its own files and the versions of the libraries. */
export async function programVersion(): Promise<string> {
  const hash = createHash('sha256')
  const inside = await Promise.all(
    ['plugins', 'site'].map(async (room) =>
      (await readdir(join(home, room), {recursive: true})).map((name) => join(room, name)),
    ),
  )
  const files = ['package-lock.json', ...inside.flat().filter((name) => /\.(ts|css)$/.test(name))].sort()
  const texts = await Promise.all(files.map((name) => readFile(join(home, name)).catch(() => '')))
  for (const [at, name] of files.entries()) hash.update(name).update('\0').update(texts[at]!).update('\0')
  return hash.digest('hex').slice(0, 16)
}
