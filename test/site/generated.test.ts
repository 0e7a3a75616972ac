import {readFileSync} from 'node:fs'
import {expect, test} from 'vitest'
import {generated} from '../../site/commands/generated.ts'

import '../support/slow.ts'

for (const {file, write} of generated)
  test(`${file} is up to date: npm run generate`, () => {
    const before = readFileSync(file, 'utf8')
    expect(write(before)).toBe(before)
  })
