import {randomBytes} from 'node:crypto'
import {existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync} from 'node:fs'
import {basename, join, resolve} from 'node:path'
import {pathToFileURL} from 'node:url'
import {build, type Plugin} from 'esbuild'
import {keyOf} from '../../site/cache.ts'

const project = resolve('.')
const {scripts} = JSON.parse(readFileSync('package.json', 'utf8')) as {scripts: Record<string, string>}
const files = Object.values(scripts).flatMap(
  (script) => /^tsx (site\/commands\/\w+\.ts)$/.exec(script)?.[1] ?? [],
)

/** What node runs for a command of the project as `npm run` has it: compiled while it starts, file by file. */
export const asWritten = (name: string): string[] => [
  '--import',
  join(project, 'node_modules/tsx/dist/esm/index.mjs'),
  join(project, `site/commands/${name}.ts`),
]

/** The same, compiled once for all tests: a process then starts in a third of the time. */
export const compiled = (name: string): string[] => [join(folder, `${name}.js`)]

/** Files beside a module are found from where it was written. */
const keepPlaces: Plugin['setup'] = (building) => {
  building.onLoad({filter: /\/(plugins|site)\/.*\.ts$/}, ({path}) => {
    const text = readFileSync(path, 'utf8')
    return {
      contents: text.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href)),
      loader: 'ts',
    }
  })
}

const folder = await compile()

/** Bundle the commands into a folder that is named by what is in it, so that two workers never write the same file. */
async function compile(): Promise<string> {
  const {outputFiles} = await build({
    absWorkingDir: project,
    entryPoints: files,
    bundle: true,
    splitting: true,
    packages: 'external',
    format: 'esm',
    target: 'node20',
    outdir: 'out',
    write: false,
    logLevel: 'error',
    plugins: [{name: 'where it was written', setup: keepPlaces}],
  })
  const home = join(project, '.cache/commands')
  const to = join(home, keyOf(...outputFiles.map(({contents}) => contents)))
  if (existsSync(to)) return to
  const beside = join(home, randomBytes(8).toString('hex'))
  mkdirSync(beside, {recursive: true})
  for (const {path, contents} of outputFiles) writeFileSync(join(beside, basename(path)), contents)
  try {
    renameSync(beside, to)
  } catch {
    rmSync(beside, {recursive: true})
  }
  return to
}
