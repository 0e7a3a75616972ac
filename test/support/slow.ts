import {vi} from 'vitest'

/** Imported by test files that take their time: they may, also where they are run alone. */
vi.setConfig({testTimeout: 180_000, hookTimeout: 180_000})
