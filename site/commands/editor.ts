import {createUnifiedLanguageServer} from 'unified-language-server'
import {readArguments} from './usage.ts'

/*
 * The library says problems and offers their values as quick fixes. It has no hover and no completion: its connection
 * is its own, and it names its abilities itself, so none can be added. What a key means, and the words that it takes,
 * are told as remarks where a key still waits for its value.
 */

const usage = `npm run editor    tells an editor about a build while you type, by the Language Server Protocol

The editor starts it by itself and talks to it over its standard streams; the README says how.`

readArguments(usage, {stdio: {type: 'boolean'}}, {most: 0})
// The library takes its streams from the command line.
if (!process.argv.includes('--stdio')) process.argv.push('--stdio')
createUnifiedLanguageServer({
  configurationSection: 'nut-to-bridge',
  // Of this program alone: nothing is loaded from the folder that is open in the editor.
  processorName: new URL(
    import.meta.url.endsWith('.ts') ? '../editor/build-processor.ts' : '../editor/build-processor.js',
    import.meta.url,
  ).href,
  processorSpecifier: 'buildProcessor',
})
