import {defineConfig} from 'vitest/config'

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  cacheDir: '.cache/vite',
  test: {
    include: ['test/**/*.test.ts'],
    execArgv: ['--import', 'tsx'],
    testTimeout: 120_000,
    hookTimeout: 180_000,
  },
})
