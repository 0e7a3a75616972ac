import {glueWaits, usualGlue} from '../../tables/waits.ts'
import {named} from './named.ts'
import type {WorkFacts} from './work-facts.ts'

/** Give the hours until a glued joint may be worked, by the neck's glue, and what to say of its clamps. */
export function glueWait({values: {neck}}: WorkFacts): {waitH: number; clampsStay: string} {
  const glue = neck?.glue?.value ?? ''
  const isNamed = named(glue)
  const row = glueWaits.find(({words}) => isNamed(words)) ?? usualGlue
  const clampsStay = row.firstH < 1 ? `${row.firstH * 60} min` : `${row.firstH} h`
  return {waitH: row.lastH, clampsStay}
}
