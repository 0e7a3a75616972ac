import {setFlagsFromString} from 'node:v8'

/**
 * A large journal is made of much that is soon let go: cleared sooner, it takes a quarter less memory at its highest. Where
 * little is made, it costs a twentieth more work.
 */
export const clearSooner = (): void => setFlagsFromString('--heap-growing-percent=30')
