import {readFileSync} from 'node:fs'
import {basename, extname, join} from 'node:path'
import type {Plugin} from 'esbuild'

/**
 * Say how the workers of the page that tries a change are bundled: what both need once, and without what only other
 * pages show. A phone in a shop loads them.
 */
export const workersOfTry = (home: string, extension: string) => ({
  entryPoints: ['try-worker', 'try-making'].map((name) => `browser/${name}${extension}`),
  splitting: true,
  chunkNames: 'try-part-[hash]',
  alias: {
    hastscript: join(home, `try/light-markup${extension}`),
    'hast-util-to-html': join(home, `try/light-markup${extension}`),
  },
  plugins: [
    {name: 'rules without their texts', setup: leaveTextsOut},
    {name: 'healing a moment later', setup: healLater(join(home, `try/later${extension}`))},
  ],
})

const loaderOf = (path: string) => (extname(path) === '.ts' ? 'ts' : 'js')

const leaveTextsOut: Plugin['setup'] = ({onLoad}) => {
  onLoad({filter: /[\\/](checks[\\/][\w-]+|build-file[\\/]rules)\.[jt]s$/}, ({path}) => {
    // Of prose and of whole journals the page has nothing.
    const isElsewhere = /^(body|journal)\./.test(basename(path))
    const source = readFileSync(path, 'utf8')
    const contents = isElsewhere
      ? withoutTexts(source, '|find|says').replace(/^import .*(printed-plan|plan-value|step-called).*$/gm, '')
      : withoutTexts(source)
    return {contents, loader: loaderOf(path)}
  })
  // What a key is for is said in the reference.
  onLoad({filter: /[\\/]build-file[\\/]schema([\\/][\w-]+)?\.[jt]s$/}, ({path}) => ({
    contents: readFileSync(path, 'utf8').replace(/(['"])[A-Z](?:(?!\1).)+\.\1/g, "''"),
    loader: loaderOf(path),
  }))
}

/** The reader finds in `path` what mends a slip. */
const healLater =
  (path: string): Plugin['setup'] =>
  ({onResolve}) => {
    onResolve({filter: /^\.\/heal\/(heal|yaml-lines|as-written)\.[jt]s$/}, () => ({path}))
  }

const texts = 'what|why|mend|passes|fails|unshown'

/** Take out of the rules of a file what only the page of rules shows; each stands in lines of its own. */
export const withoutTexts = (source: string, more = ''): string =>
  source.replace(
    new RegExp(
      `^( +)(?:${texts}${more})(?::|\\()[\\s\\S]*?\\n(?=\\1(?:${texts}|severity|about|find|says)\\b|(?!\\1) *\\})`,
      'gm',
    ),
    '',
  )
