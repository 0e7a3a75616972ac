import type {Build} from '../../plugins/build-file/schema/build.ts'
import type {Problem} from '../../plugins/build-file/schema/problem.ts'
import type {JournalSettings} from '../../plugins/build-file/schema/schema.ts'
import type {Effects} from '../../plugins/plan/effects.ts'
import type {Family} from '../../plugins/plan/family.ts'
import type {Lot} from '../../plugins/plan/kit/context.ts'
import type {Plan} from '../../plugins/plan/plan.ts'
import type {RackContext, RackPiece} from '../../plugins/plan/stock/rack.ts'
import type {Relatives} from '../../plugins/sections/section.ts'
import type {Artefact} from './page.ts'
import type {Picture} from './picture.ts'

/** What a build's own pages are made of: drawn and worded once, and kept by what it was made from. */
export interface MadeBuild {
  /** How it stands, in a line, as HTML; empty where that is left out. */
  state: string
  /** Its drawing, as HTML. */
  drawing: string
  /** The prose and the other sections, as HTML. */
  html: string
  /** Drawings that its folds show, by the names of their files. */
  drawings: Readonly<Record<string, string>>
  headings: readonly {id: string; depth: number; title: string}[]
  /** Its own scale drawing for the portfolio. */
  hanging: Hanging | undefined
  /** Every word of its file once, for the search. */
  words: string
  /** What this program failed to make of it, which is its own fault. */
  faults: readonly Problem[]
}

/** An instrument drawn from the front as it hangs: SVG in millimetres, the nut line at y = 0, the centre line at x = 0. */
export interface Hanging {
  shapes: string
  frame: {x: number; y: number; width: number; height: number}
  /** The woods whose patterns fill it. */
  woods: readonly string[]
}

/** A build as the pages of the site see it. */
export interface SiteBuild {
  slug: string
  /** As people name it: `builds/needle-box.md`. */
  file: string
  title: string
  /** The build file as read. */
  text: string
  build: Build
  plan: Plan
  problems: readonly Problem[]
  relatives: Relatives
  /** All that it was copied from or is an original of. */
  family: Family
  /** What its changes on the one that it was copied from come to. */
  effects?: Effects | undefined
  /** What stands on the rack for it; no draft is named. */
  rack: RackContext
  isDraft: boolean
  made: MadeBuild
  cover?: Picture | undefined
  /** Its pictures by the names that the file gives them. */
  pictures: ReadonlyMap<string, Picture>
  /** Stands for all that the build's own pages are made of; of a build in outline, for what it shows but days and links. */
  key: string
  /** Its pictures, recordings and other files that its page shows or leads to. */
  files: readonly Artefact[]
  /** Names of files to take away that this program fails to write. */
  ungiven: readonly string[]
}

/** Everything that pages are made from; the builds are those that the site shows, newest first. */
export interface SiteData {
  around: Surround
  journal: JournalSettings
  /** What stands on the rack after all builds, what builds that are not started reserve, and the day that this is true of. */
  rack: {
    pieces: readonly RackPiece[]
    lots: readonly Lot[]
    reserved: readonly {id: string; by: string}[]
    day: string | undefined
  }
  builds: readonly SiteBuild[]
  /** Files that could not be read at all, shown while writing. */
  unread: readonly {file: string; message: string}[]
}

/** What all pages of one site share: where it lies, what it is called, and where its own files are. */
export interface Surround {
  /** `/`, or the path that the site lies under: `/journal/`. */
  prefix: string
  /** The journal's name. */
  title: string
  maker?: string | undefined
  /** How to ask for what is for sale. */
  ask?: string | undefined
  /** Where the site is published, without a slash at its end: `https://journal.example`. */
  origin?: string | undefined
  /** Addresses of style sheet, scripts and icon, by name. */
  assets: Readonly<Record<string, string>>
  /** Served while somebody writes: pages reload themselves, and drafts are there. */
  isWriting: boolean
}

/** The problems of one file. */
export interface FileProblems {
  file: string
  problems: readonly Problem[]
}
