import {fileURLToPath} from 'node:url'

/** Where the program lies that runs: compiled, packed, or as it is written. */
export const programFolder = fileURLToPath(new URL('../..', import.meta.url))
