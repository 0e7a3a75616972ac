import type {RuleText} from '../build-file/rules/rule-text.ts'

const sound = '---\ntitle: Needle box\n---\n\n\n'

/** Found where the files of a journal are opened, and not by looking at a build and its plan. */
export const openingRules = {
  'build-twice': {
    severity: 'error',
    about: 'journal',
    what: 'A build that is there twice, as SLUG.md and as SLUG/index.md.',
    why: 'Only one of the two can be published.',
    mend: 'Keep one.',
    passes: {journal: {'builds/needle-box.md': sound, 'builds/ferry-bell/index.md': sound}},
    fails: {journal: {'builds/needle-box.md': sound, 'builds/needle-box/index.md': sound}},
  },
  'file-unreadable': {
    severity: 'error',
    about: 'journal',
    what: 'A file of the journal that cannot be read.',
    why: 'Only plain files that lie in the journal are read: no pipe, no device, no link that leads out.',
    mend: 'Put a plain file in its place.',
    unshown: 'What a disk refuses, a pipe or a link cannot be written down as a text.',
  },
  'rack-name-twice': {
    severity: 'fault',
    about: 'journal',
    what: 'A name that two pieces on the rack have.',
    why: 'A build says by its name which piece it takes, and could mean either.',
    mend: 'Pencil another name on one of them; say count for several alike.',
    passes: {
      journal: {
        'builds/rack.yaml': '- {id: A1, wood: beech}\n- {id: A2, wood: beech}\n',
        'builds/needle-box.md': sound,
      },
    },
    fails: {
      journal: {
        'builds/rack.yaml': '- {id: A1, wood: beech}\n- {id: A1, wood: oak}\n',
        'builds/needle-box.md': sound,
      },
    },
  },
  'site-address': {
    severity: 'warning',
    about: 'journal',
    what: 'An address of the site that is none.',
    why: 'Feed and site map lead there, and a browser goes to http and https alone.',
    mend: 'Write it as https://journal.example.',
    passes: {
      journal: {'builds/journal.yaml': 'site: https://journal.example\n', 'builds/needle-box.md': sound},
    },
    fails: {journal: {'builds/journal.yaml': 'site: "javascript:taken()"\n', 'builds/needle-box.md': sound}},
  },
  'program-fails': {
    severity: 'error',
    about: 'file',
    what: 'A build file that this program fails on.',
    why: 'It is the program’s own fault; every other build goes on.',
    mend: 'Take out the last change, and report the file.',
    unshown: 'What is known to fail is mended.',
  },
} satisfies Record<string, RuleText>
