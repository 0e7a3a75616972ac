import {dirname, extname, join} from 'node:path'
import {fileURLToPath} from 'node:url'
import {build} from 'esbuild'
import type {Artefact} from '../kit/page.ts'
import {workersOfTry} from './try-scripts.ts'

const here = fileURLToPath(import.meta.url)
const home = join(dirname(here), '..')

/** The browser scripts, by the names that pages ask for. */
const scripts = [
  'page',
  'portfolio',
  'side-by-side',
  'try',
  'try-offline',
  'unfold',
  'live',
  'bench',
] as const

/** The style sheet, scripts, fonts and icon of the site: their addresses by name, and the files themselves. */
export interface Assets {
  addresses: Readonly<Record<string, string>>
  files: Artefact[]
}

/** Bundle the style sheet and the browser scripts; a file's name changes with what is in it. */
export async function buildAssets(): Promise<Assets> {
  const ending = extname(here)
  const bundles = await Promise.all([
    build({
      ...common,
      entryPoints: [
        'styles/style.css',
        'styles/icon.svg',
        ...scripts.map((name) => `browser/${name}${ending}`),
      ],
      loader: {'.woff2': 'file', '.svg': 'copy'},
    }),
    build({...common, ...workersOfTry(home, ending)}),
  ])
  const addresses: Record<string, string> = {}
  for (const {metafile} of bundles)
    for (const [file, {entryPoint}] of Object.entries(metafile.outputs)) {
      const name = file.endsWith('.woff2') ? 'face' : entryPoint?.split('/').at(-1)?.split('.')[0]
      if (name) addresses[name] = addressOf(file)
    }
  const files = bundles.flatMap(({outputFiles}) =>
    outputFiles.map(({path, contents, hash}) => ({
      address: addressOf(path),
      key: hash,
      bytes: () => contents,
    })),
  )
  const ofTry = files.map(({address}) => address).filter((address) => /^\/try\/try-/.test(address))
  return {
    addresses: {...addresses, 'try-files': ofTry.sort().join(' ')},
    files: files.sort((a, b) => (a.address < b.address ? -1 : 1)),
  }
}

const common = {
  absWorkingDir: home,
  bundle: true,
  minify: true,
  charset: 'utf8',
  format: 'esm',
  target: ['es2022', 'chrome111', 'firefox114', 'safari16'] as string[],
  outdir: '/assets',
  outbase: '.',
  entryNames: '[name]-[hash]',
  assetNames: '[name]-[hash]',
  legalComments: 'none',
  write: false,
  metafile: true,
  logLevel: 'error',
} as const

/** What works without a network lies beside its page: a worker is served by another only below that one's own folder. */
function addressOf(file: string): string {
  const name = file.replaceAll('\\', '/').split('/').at(-1)!
  if (name.startsWith('try-offline-')) return '/try/offline.js'
  return /^try-(worker|making|part)-/.test(name) ? `/try/${name}` : `/assets/${name}`
}
