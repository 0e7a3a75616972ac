import type {Effects} from '../../plugins/plan/effects.ts'
import type {RackContext} from '../../plugins/plan/stock/rack.ts'
import {downloadNames} from '../kit/own-names.ts'
import type {Known, Unmade} from '../kit/page.ts'
import type {PictureLook} from '../pictures/look.ts'
import type {Downloads} from './downloads.ts'
import type {Drawn} from './draw-build.ts'
import type {Glance, Listed, MakeResult, PlanResult, ReadResult, Summary} from './results.ts'

// What is read back from disk may be anything: only what has the shape that was written is taken.

/** Tell whether a kept value is what reading a file of this slug gives under this key. */
export const isReadResult =
  (key: string, slug: string) =>
  (value: unknown): value is ReadResult =>
    isRecord(value) && value.key === key && isBuild(value.build, slug) && isListOf(value.problems, isProblem)

/** Tell whether a kept value is a plan of this slug, under this key. */
export const isPlanResult =
  (key: string, slug: string) =>
  (value: unknown): value is PlanResult =>
    isRecord(value) &&
    value.key === key &&
    isBuild(value.build, slug) &&
    isRecord(value.plan) &&
    value.plan.slug === slug &&
    Array.isArray(value.plan.assumptions) &&
    (value.shown === undefined || isText(value.shown)) &&
    isListOf(value.problems, isProblem)

/** Tell whether a kept value is the body of a page, under this key. */
export const isMakeResult =
  (key: string) =>
  (value: unknown): value is MakeResult =>
    isRecord(value) &&
    value.key === key &&
    [value.state, value.drawing, value.html, value.words].every(isText) &&
    isRecord(value.drawings) &&
    Object.entries(value.drawings).every(([name, svg]) => /^[a-z0-9-]+\.svg$/.test(name) && isText(svg)) &&
    isListOf(value.headings, isHeading) &&
    isListOf(value.faults, isProblem)

/** Tell whether a kept value is a build drawn for the pages of others. */
export const isDrawn = (value: unknown): value is Drawn =>
  isRecord(value) &&
  (value.cover === undefined || isText(value.cover)) &&
  (value.hanging === undefined || isHanging(value.hanging)) &&
  isListOf(value.faults, isProblem)

/**
 * Tell whether a kept value is what was made of a build, in short. Addresses become paths, so they lead nowhere else;
 * what this program failed at is tried again.
 */
export const isSummary = (value: unknown): value is Summary =>
  isSeen(value) &&
  isText(value.made.words) &&
  isListOf(value.faults, () => false) &&
  isListOf(value.unmade, () => false) &&
  isListOf(value.from, isText) &&
  isListOf(value.files, isKnown)

/** Tell whether a kept value is what other pages show of a build. */
export const isGlance = (value: unknown): value is Glance => isSeen(value) && isText(value.called)

const isSeen = (
  value: unknown,
): value is Readonly<Record<string, unknown>> & {made: Readonly<Record<string, unknown>>} =>
  isRecord(value) &&
  isRecord(value.made) &&
  isListOf(value.made.headings, isHeading) &&
  (value.made.hanging === undefined || isHanging(value.made.hanging)) &&
  (value.cover === undefined || isText(value.cover)) &&
  isListOf(
    value.pages,
    (page) => isKnown(page) && isRecord(page) && isRecord(page.data) && isText(page.layout),
  )

/** Tell whether a kept value is a list of builds. */
export const isList = (value: unknown): value is Listed[] =>
  isListOf(
    value,
    (one) =>
      isRecord(one) &&
      [one.slug, one.file, one.title].every(isText) &&
      [one.basedOn, one.rack].every((text) => text === undefined || isText(text)),
  )

/** Tell whether a kept value is what stands on the rack for a build. */
export const isRackContext = (value: unknown): value is RackContext =>
  isRecord(value) && [value.pieces, value.lots, value.gone, value.reserved].every(Array.isArray)

/** Tell whether a kept value names pages, all of which could be made. */
export const isKnownPages = (value: unknown): value is {pages: Known[]; unmade: Unmade[]} =>
  isRecord(value) && isListOf(value.pages, isKnown) && isListOf(value.unmade, () => false)

const isKnown = (value: unknown): boolean =>
  isRecord(value) && isText(value.key) && isText(value.address) && isOwnAddress(value.address)

/** Tell whether an address is one of a site: it starts at its root and does not climb. */
export const isOwnAddress = (address: string): boolean =>
  /^\/(?!\/)[^\0\\]*$/.test(address) && !(address.includes('..') && address.split('/').includes('..'))

/** Tell whether a kept value is what the changes of a build come to. */
export const isEffects = (value: unknown): value is Effects =>
  isRecord(value) &&
  isFelt(value.was) &&
  isFelt(value.is) &&
  isListOf(value.alone, (one) => isRecord(one) && isListOf(one.paths, isText) && isFelt(one.is))

const isFelt = (value: unknown): boolean =>
  isRecord(value) &&
  Object.entries(value).every(([name, felt]) => (name === 'airNote' ? isText(felt) : isNumber(felt)))

/** Tell whether a kept value is a picture as it was looked at. */
export const isPictureLook = (value: unknown): value is PictureLook =>
  isRecord(value) &&
  isText(value.hash) &&
  /^[0-9a-f]{24}$/.test(value.hash) &&
  isNumber(value.width) &&
  isNumber(value.height) &&
  (value.format === undefined || isText(value.format)) &&
  (value.trouble === undefined ? value.width > 0 && value.height > 0 : isText(value.trouble))

/** Tell whether a kept value is files to give away: none by any other name, since names become paths. */
export const isDownloads = (value: unknown): value is Downloads =>
  isRecord(value) &&
  isRecord(value.files) &&
  Object.entries(value.files).every(
    ([name, file]) =>
      isDownloadName(name) && isRecord(file) && isText('text' in file ? file.text : file.base64),
  ) &&
  isListOf(value.failed, (one) => isRecord(one) && isDownloadName(one.name) && isText(one.why))

const isDownloadName = (name: unknown): boolean => downloadNames.some((known) => known === name)

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

const isText = (value: unknown): value is string => typeof value === 'string'

const isNumber = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value)

const isListOf = (value: unknown, isOne: (one: unknown) => boolean): boolean =>
  Array.isArray(value) && value.every(isOne)

const isProblem = (value: unknown): boolean =>
  isRecord(value) &&
  [value.rule, value.message].every(isText) &&
  ['error', 'fault', 'warning', 'remark'].includes(String(value.severity)) &&
  [value.line, value.column, value.endLine, value.endColumn].every(isNumber)

const isBuild = (value: unknown, slug: string): boolean =>
  isRecord(value) &&
  value.slug === slug &&
  [value.values, value.places, value.keys].every(isRecord) &&
  [value.days, value.links, value.directives, value.references].every(Array.isArray)

const isHeading = (value: unknown): boolean =>
  isRecord(value) && isText(value.id) && isText(value.title) && isNumber(value.depth)

const isHanging = (value: unknown): boolean =>
  isRecord(value) &&
  isText(value.shapes) &&
  isListOf(value.woods, isText) &&
  isRecord(value.frame) &&
  [value.frame.x, value.frame.y, value.frame.width, value.frame.height].every(isNumber)
