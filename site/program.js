import {createHash, randomBytes} from 'node:crypto'
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import {basename, dirname, join, relative} from 'node:path'
import {fileURLToPath, pathToFileURL} from 'node:url'

// The program is compiled once, into the cache, by what is in it, so that a command is at work at once. This file and
// run.js are plain JavaScript, since they must run as they are.

const site = dirname(fileURLToPath(import.meta.url))
const project = join(site, '..')
const home = join(project, '.cache/program')
const sources = ['plugins', 'site'].flatMap((room) =>
  readdirSync(join(project, room), {recursive: true, encoding: 'utf8'})
    .filter((name) => /\.(ts|css|svg)$/.test(name))
    .map((name) => join(room, name)),
)
const hash = createHash('sha256')
for (const name of ['package.json', 'package-lock.json', 'site/program.js', ...sources.sort()])
  hash
    .update(name)
    .update('\0')
    .update(readFileSync(join(project, name)))
    .update('\0')

/** Where the compiled program lies; named by all that it is made from. */
export const program = join(home, hash.digest('hex').slice(0, 24))

if (!existsSync(program)) {
  await compile(program)
  clear()
}

/**
 * Bundle into a folder the commands, all their libraries but those that have files of their own or load themselves; and,
 * by the program itself, what goes with it to be read. The folder's name is the program's version.
 *
 * @param {string} folder
 * @param {import('esbuild').Plugin[]} changes what a measurement takes other than it is written
 */
export async function compile(folder, changes = []) {
  const {build} = await import('esbuild')
  const {outputFiles} = await build({
    absWorkingDir: site,
    entryPoints: [
      ...['build', 'check', 'editor', 'new', 'plan', 'start'].map((name) => `commands/${name}.ts`),
      'editor/build-processor.ts',
      'package/beside-program.ts',
    ],
    outbase: '.',
    bundle: true,
    splitting: true,
    external: [
      '@11ty/eleventy-dev-server',
      'chokidar',
      'esbuild',
      'pdfkit',
      'sharp',
      'unified-language-server',
    ],
    // Libraries of the older kind ask for Node's own modules by name.
    banner: {
      js: `import {createRequire as toRequire} from 'node:module'; const require = toRequire(import.meta.url);`,
    },
    format: 'esm',
    platform: 'node',
    target: 'node20',
    outdir: folder,
    write: false,
    logLevel: 'error',
    plugins: [
      ...changes,
      {
        name: 'files are found from where a module was written',
        setup: (building) => keepPlaces(building, folder),
      },
    ],
  })
  const beside = join(dirname(folder), randomBytes(8).toString('hex'))
  for (const {path, contents} of outputFiles) {
    const file = join(beside, relative(folder, path))
    mkdirSync(dirname(file), {recursive: true})
    writeFileSync(file, contents)
  }
  const {writeBesideProgram} = await import(pathToFileURL(join(beside, 'package/beside-program.js')).href)
  await writeBesideProgram(beside, basename(folder))
  try {
    renameSync(beside, folder)
  } catch (error) {
    // Another process was quicker.
    rmSync(beside, {recursive: true})
    if (!existsSync(folder)) throw error
  }
}

/**
 * Let go of older programs but the last few, which a command that still runs may read on. Another process may let go of
 * the same; and what a clock that ran ahead has dated is no newer than what was made just now.
 */
function clear() {
  const others = readdirSync(home).filter((name) => name !== basename(program))
  /** @param {string} name */
  const at = (name) => statSync(join(home, name), {throwIfNoEntry: false})?.mtimeMs ?? 0
  const made = others.map((name) => ({name, at: at(name)}))
  const old = made.sort((a, b) => b.at - a.at).slice(3)
  for (const {name} of old) rmSync(join(home, name), {recursive: true, force: true})
}

/**
 * @param {import('esbuild').PluginBuild} building
 * @param {string} folder
 */
function keepPlaces(building, folder) {
  // The editor's library loads what lies beside the compiled command.
  const inPlace = join(site, 'commands/editor.ts')
  // What goes with the program lies where the program does.
  const withProgram = join(site, 'kit/program-folder.ts')
  building.onLoad({filter: /\.ts$|eleventy.*\.js$/}, ({path}) => {
    if (path === inPlace) return undefined
    const from = path === withProgram ? join(folder, 'site/kit/program-folder.ts') : path
    const place = JSON.stringify(pathToFileURL(from).href)
    const contents = readFileSync(path, 'utf8').replaceAll('import.meta.url', place)
    return {contents, loader: path.endsWith('.ts') ? 'ts' : 'js'}
  })
}
