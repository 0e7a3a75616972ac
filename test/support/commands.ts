import {join, resolve} from 'node:path'
import {program} from '../../site/program.js'

/** What node runs for a command of the project as `npm run` has it. */
export const asWritten = (name: string): string[] => [resolve('site/run.js'), name]

/** The same without a look at what the program is made from. */
export const compiled = (name: string): string[] => [join(program, 'commands', `${name}.js`)]
