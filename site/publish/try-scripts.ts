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
    {name: 'what the first worker needs in one file', setup: inOneFile},
    {name: 'rules without their texts', setup: leaveTextsOut},
    {name: 'YAML without what no build file has', setup: plainTags},
    {name: 'YAML that is not folded', setup: unfolded},
    {name: 'healing a moment later', setup: healLater(join(home, `try/later${extension}`))},
  ],
})

/**
 * Files that the same parts need are bundled together: let each need all that the first worker does, which stands there
 * by then, so that it is one file.
 */
const inOneFile: Plugin['setup'] = ({onLoad}) => {
  onLoad({filter: /[\\/](try[\\/]later-\w+|browser[\\/]try-making)\.[jt]s$/}, ({path}) => {
    const first = ['fields', 'handles', 'later', 'session', 'view']
    const imports = first.map((name) => `import '../try/${name}${extname(path)}'`)
    return {contents: [readFileSync(path, 'utf8'), ...imports].join('\n'), loader: loaderOf(path)}
  })
}

const loaderOf = (path: string) => (extname(path) === '.ts' ? 'ts' : 'js')

const leaveTextsOut: Plugin['setup'] = ({onLoad}) => {
  onLoad({filter: /[\\/](checks|build-file[\\/]rules)[\\/][\w-]+\.[jt]s$/}, ({path}) => {
    // Of prose and of whole journals the page has nothing.
    const isElsewhere = /^(body|journal|named-files|opening)\./.test(basename(path))
    const source = readFileSync(path, 'utf8')
    const contents = isElsewhere
      ? withoutTexts(source, '|find|says').replace(/^import .*(printed-plan|plan-value|step-called).*$/gm, '')
      : withoutTexts(source)
    return {contents, loader: loaderOf(path)}
  })
  // What a key is for is said in the reference.
  onLoad({filter: /[\\/]build-file[\\/]schema[\\/][\w-]+\.[jt]s$/}, ({path}) => ({
    contents: readFileSync(path, 'utf8').replace(/(['"])[A-Z](?:(?!\1).)+\.\1/g, "''"),
    loader: loaderOf(path),
  }))
  // So is what is usual, in general; where a row is from, a wood's name in Latin, and how far it can be trusted.
  onLoad({filter: /[\\/]build-file[\\/]usual[\\/][\w-]+\.[jt]s$/}, ({path}) => ({
    contents: without(path, /\bsays:\s*(['"`])(?:(?!\1).)*\1,?/g),
    loader: loaderOf(path),
  }))
  onLoad({filter: /[\\/]tables[\\/]strings\.[jt]s$/}, ({path}) => ({
    contents: without(path, /\b(?:s|densityS|stiffnessS)ource: ?(?:'[^']*'|"[^"]*"),? ?/g),
    loader: loaderOf(path),
  }))
  onLoad({filter: /[\\/]tables[\\/]woods\.[jt]s$/}, ({path}) => ({
    contents: without(path, /\b(?:latin|trust|shrinkTrust|shearMpa|gBasic): ?(?:'[^']*'|[\d.]+),? ?/g)
      // Where its movement is printed nothing follows from how it shrinks, and never from its volume.
      .replace(/shrinkPercent: ?\[[\d., ]+\], ?(?=moves\b)/g, '')
      .replace(/(shrinkPercent: ?\[[\d.]+, ?[\d.]+), ?[\d.]+(?=\])/g, '$1'),
    loader: loaderOf(path),
  }))
}

/** Of what YAML knows by its tags, what a build file has: texts, figures, lists and keys. */
const plainTags: Plugin['setup'] = ({onLoad}) => {
  onLoad({filter: /[\\/]yaml[\\/]browser[\\/]dist[\\/]schema[\\/]tags\.js$/}, () => ({
    contents: `import {schema} from './core/schema.js'
      const known = (name, collection) => {
        const tag = 'tag:yaml.org,2002:' + name
        return [tag, {tag, collection, resolve: (value) => value}]
      }
      export const coreKnownTags = Object.fromEntries([
        known('binary'), known('merge'), known('timestamp'),
        known('omap', 'seq'), known('pairs', 'seq'), known('set', 'map'),
      ])
      export const getTags = () => schema.slice()`,
    loader: 'js',
  }))
}

/** What is written is never folded at a width. */
const unfolded: Plugin['setup'] = ({onLoad}) => {
  onLoad({filter: /[\\/]yaml[\\/]browser[\\/]dist[\\/]stringify[\\/]foldFlowLines\.js$/}, () => ({
    contents: `export const [FOLD_BLOCK, FOLD_FLOW, FOLD_QUOTED] = ['block', 'flow', 'quoted']
      export const foldFlowLines = (text) => text`,
    loader: 'js',
  }))
}

const without = (path: string, what: RegExp) => readFileSync(path, 'utf8').replace(what, '')

/** The reader finds in `path` what mends a slip, and what tells of one. */
const healLater =
  (path: string): Plugin['setup'] =>
  ({onResolve}) => {
    onResolve({filter: /^\.\/(heal\/(heal|yaml-lines|as-written|keys)|yaml-words)\.[jt]s$/}, () => ({path}))
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
