import {dirname, extname, join} from 'node:path'
import {fileURLToPath} from 'node:url'
import {build} from 'esbuild'
import type {Assets} from './assets.ts'

const here = fileURLToPath(import.meta.url)
const home = join(dirname(here), '..')

/** The browser scripts, by the names that pages ask for. */
const scripts = [
  'page',
  'portfolio',
  'side-by-side',
  'try',
  'try-offline',
  'try-worker',
  'unfold',
  'live',
  'bench',
] as const

/** Bundle the style sheet and the browser scripts; a file's name changes with what is in it. */
export async function buildAssets(): Promise<Assets> {
  const {outputFiles, metafile} = await build({
    absWorkingDir: home,
    entryPoints: [
      'styles/style.css',
      'styles/icon.svg',
      ...scripts.map((name) => `browser/${name}${extname(here)}`),
    ],
    bundle: true,
    minify: true,
    format: 'esm',
    target: ['es2022', 'chrome111', 'firefox114', 'safari16'],
    loader: {'.woff2': 'file', '.svg': 'copy'},
    outdir: '/assets',
    outbase: '.',
    entryNames: '[name]-[hash]',
    assetNames: '[name]-[hash]',
    chunkNames: '[name]-[hash]',
    legalComments: 'none',
    write: false,
    metafile: true,
    logLevel: 'error',
  })
  const addresses: Record<string, string> = {}
  for (const [file, {entryPoint}] of Object.entries(metafile.outputs)) {
    const name = file.endsWith('.woff2') ? 'face' : entryPoint?.split('/').at(-1)?.split('.')[0]
    if (name) addresses[name] = addressOf(file)
  }
  const files = outputFiles.map(({path, contents, hash}) => ({
    address: addressOf(path),
    key: hash,
    bytes: () => contents,
  }))
  return {addresses, files: files.sort((a, b) => (a.address < b.address ? -1 : 1))}
}

/** What works without a network lies beside its page: a worker is served by another only below that one's own folder. */
function addressOf(file: string): string {
  const name = file.replaceAll('\\', '/').split('/').at(-1)!
  if (name.startsWith('try-offline-')) return '/try/offline.js'
  return name.startsWith('try-worker-') ? `/try/${name}` : `/assets/${name}`
}
