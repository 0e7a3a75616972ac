import {keyOf} from '../html/page-of.ts'
import type {GiveInput, MakeInput, PlanInput, ReadInput} from './works.ts'

/** The keys of the steps: each stands for its input, and through it for the step before. */
export const readKey = ({slug, text, journal}: ReadInput): string =>
  keyOf('read', slug, text, JSON.stringify(journal))

export const planKey = ({read, surroundings, journal, pieces, gone}: PlanInput): string =>
  keyOf('plan', read.key, JSON.stringify([surroundings, journal, pieces, gone]))

export const makeKey = ({planned, path, relatives, pictures, published, pathPrefix}: MakeInput): string =>
  keyOf('make', planned.key, path, JSON.stringify([relatives, pictures, published, pathPrefix]))

export const giveKey = ({planKey: key, build, journal}: GiveInput): string =>
  keyOf('give', key, build.slug, JSON.stringify(journal))
