import {type ChildProcess, spawn} from 'node:child_process'
import {join} from 'node:path'
import {pathToFileURL} from 'node:url'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {
  type CodeAction,
  CodeActionRequest,
  createProtocolConnection,
  type Diagnostic,
  DiagnosticSeverity,
  DidChangeTextDocumentNotification,
  DidCloseTextDocumentNotification,
  DidOpenTextDocumentNotification,
  DocumentFormattingRequest,
  ExitNotification,
  InitializedNotification,
  InitializeRequest,
  type ProtocolConnection,
  PublishDiagnosticsNotification,
  type PublishDiagnosticsParams,
  ShutdownRequest,
  StreamMessageReader,
  StreamMessageWriter,
  type TextEdit,
} from 'vscode-languageserver-protocol/node.js'
import {emptyKeys} from '../../site/editor/empty-keys.ts'
import {journalFile} from '../../site/editor/whose-file.ts'
import {compiled} from '../support/commands.ts'
import '../support/slow.ts'
import {tempJournal} from '../support/temp-journal.ts'

/* The judge is a client of the Language Server Protocol's own library, over standard streams, as an editor has it. */

const journal = tempJournal({
  'package.json': '{}',
  'builds/journal.yaml': 'units: mm\n',
  'builds/box.md': '',
})
const client = {} as {server: ChildProcess; connection: ProtocolConnection}
const waiting = new Map<string, (told: PublishDiagnosticsParams) => void>()
let version = 0

beforeAll(async () => {
  client.server = spawn(process.execPath, [...compiled('editor'), '--stdio'], {cwd: journal.root})
  client.connection = createProtocolConnection(
    new StreamMessageReader(client.server.stdout!),
    new StreamMessageWriter(client.server.stdin!),
  )
  client.connection.onNotification(PublishDiagnosticsNotification.type, (told) =>
    waiting.get(told.uri)?.(told),
  )
  client.connection.listen()
  const root = pathToFileURL(journal.root).href
  const {capabilities} = await client.connection.sendRequest(InitializeRequest.type, {
    processId: process.pid,
    rootUri: root,
    workspaceFolders: [{uri: root, name: 'journal'}],
    capabilities: {},
  })
  expect(capabilities).toMatchObject({codeActionProvider: {codeActionKinds: ['quickfix']}})
  await client.connection.sendNotification(InitializedNotification.type, {})
})
afterAll(async () => {
  await client.connection.sendRequest(ShutdownRequest.type)
  await client.connection.sendNotification(ExitNotification.type)
  client.connection.dispose()
  journal.remove()
})

const uriOf = (path: string) => pathToFileURL(join(journal.root, path)).href

/** Open a text, or change the one that is open, and wait for what is told of it. */
async function told(path: string, text: string, isOpen = false): Promise<Diagnostic[]> {
  const uri = uriOf(path)
  version += 1
  const answer = new Promise<PublishDiagnosticsParams>((done) => {
    waiting.set(uri, done)
  })
  if (isOpen)
    await client.connection.sendNotification(DidChangeTextDocumentNotification.type, {
      textDocument: {uri, version},
      contentChanges: [{text}],
    })
  else
    await client.connection.sendNotification(DidOpenTextDocumentNotification.type, {
      textDocument: {uri, version, languageId: 'markdown', text},
    })
  return (await answer).diagnostics
}

async function closed(path: string): Promise<void> {
  const uri = uriOf(path)
  const answer = new Promise((done) => {
    waiting.set(uri, done)
  })
  await client.connection.sendNotification(DidCloseTextDocumentNotification.type, {textDocument: {uri}})
  await answer
}

async function fixes(path: string, diagnostics: Diagnostic[]): Promise<CodeAction[]> {
  const [{range}] = diagnostics as [Diagnostic]
  const actions = await client.connection.sendRequest(CodeActionRequest.type, {
    textDocument: {uri: uriOf(path)},
    range,
    context: {diagnostics},
  })
  return actions as CodeAction[]
}

/** Put a fix's edits into a text as an editor does: by lines and columns from 0. */
function fixed(text: string, action: CodeAction, path: string): string {
  const edits: TextEdit[] = action.edit!.changes![uriOf(path)]!
  const starts = [0, ...[...text.matchAll(/\n/g)].map(({index}) => index + 1)]
  const at = ({line, character}: {line: number; character: number}) => starts[line]! + character
  return edits.reduce(
    (all, {range, newText}) => all.slice(0, at(range.start)) + newText + all.slice(at(range.end)),
    text,
  )
}

const build = (...lines: string[]) => ['---', 'title: Needle box', ...lines, '---', ''].join('\n')
const path = 'builds/box.md'

describe('while a build is typed', () => {
  test('its problems are told at their place, each with its rule and its mend', async () => {
    const slipped = build('units: in', 'scale: 24 inn')
    const [first, ...others] = await told(path, slipped)
    expect(others).toEqual([])
    expect(first).toMatchObject({
      range: {start: {line: 3, character: 7}, end: {line: 3, character: 13}},
      severity: DiagnosticSeverity.Error,
      code: 'unreadable-length',
      source: 'nut-to-bridge',
    })
    const [fix] = await fixes(path, [first!])
    expect(fix).toMatchObject({kind: 'quickfix', isPreferred: true})
    const sound = fixed(slipped, fix!, path)
    expect(sound).toBe(build('units: in', 'scale: 24 in'))
    expect(await told(path, sound, true)).toEqual([])
    await closed(path)
  })
  test('a mend that reaches further than its place is one fix', async () => {
    const twice = build('scale: 600', 'box: 250 x 180 x 50', 'scale: 600')
    const problems = await told(path, twice)
    const [fix] = await fixes(
      path,
      problems.filter(({code}) => code === 'key-twice'),
    )
    const sound = fixed(twice, fix!, path)
    expect(await told(path, sound, true)).toEqual([])
    await closed(path)
  })
  test.each(['\n', '\r\n'])('several readings are several fixes, whatever the ends of lines', async (end) => {
    const open = build('started: 3/7/2026').replaceAll('\n', end)
    const actions = await fixes(path, await told(path, open))
    expect(actions.map((action) => fixed(open, action, path)).sort()).toEqual(
      ['2026-03-07', '2026-07-03'].map((day) => build(`started: ${day}`).replaceAll('\n', end)),
    )
    await closed(path)
  })
  test('bare numbers are in the journal’s units', async () => {
    expect(await told(path, build('scale: 616'))).toEqual([])
    expect(await told(path, build('units: in', 'scale: 616'), true)).toMatchObject([{code: 'out-of-range'}])
    await closed(path)
  })
  test('an empty key says what it means, and offers its words', async () => {
    const open = build('scale: 616', 'neck:', '  joins:')
    const [empty] = await told(path, open)
    expect(empty).toMatchObject({
      severity: DiagnosticSeverity.Information,
      message: expect.stringContaining('neck.joins: '),
    })
    const actions = await fixes(path, [empty!])
    expect(actions.map((action) => fixed(open, action, path).split('\n')[4])).toEqual([
      '  joins: on top',
      '  joins: through',
      '  joins: end',
    ])
    await closed(path)
  })
  test('what an editor calls formatting changes nothing', async () => {
    await told(path, build('scale:   616   # as it is'))
    const options = {tabSize: 2, insertSpaces: true}
    const edits = await client.connection.sendRequest(DocumentFormattingRequest.type, {
      textDocument: {uri: uriOf(path)},
      options,
    })
    expect(edits).toBeNull()
    await closed(path)
  })
  test('half a file never ends the server', async () => {
    const whole = build('scale: {length: 616, lines: 19}', 'strings: [D3 .030w]')
    let isOpen = false
    for (let end = 0; end <= whole.length; end += 7) {
      const diagnostics = await told(path, whole.slice(0, end), isOpen)
      isOpen = true
      for (const {message} of diagnostics) expect(message).not.toMatch(/\bat .*:\d+:\d+\)/)
    }
    await closed(path)
  })
  test('settings and rack are read as such, and no other file at all', async () => {
    expect(await told('builds/journal.yaml', 'units: cubits\n')).toMatchObject([{code: 'unknown-choice'}])
    expect(await told('builds/rack.yaml', '- {id: A, length: 24 inn}\n')).toMatchObject([
      {code: 'unreadable-length'},
    ])
    expect(await told('notes.md', 'scale: 24 inn\n')).toEqual([])
  })
})

test('which files are of a journal', () => {
  expect(journalFile('/a/builds/needle-box.md')).toMatchObject({slug: 'needle-box', folder: '/a/builds'})
  expect(journalFile('/a/builds/needle-box/index.md')).toMatchObject({
    slug: 'needle-box',
    folder: '/a/builds',
  })
  expect(journalFile('/a/builds/rack.yaml')).toMatchObject({name: 'rack.yaml'})
  for (const path of ['/a/README.md', '/a/builds/b/notes.md', '/a/builds/b.txt', '/builds'])
    expect(journalFile(path)).toBeUndefined()
})

test('a key waits for its value where nothing stands behind or below it', () => {
  const waits = (...lines: string[]) =>
    emptyKeys(build(...lines), 'box.md').map(({line, message}) => `${line} ${message.split(':')[0]}`)
  expect(waits('status:', 'play: # slide')).toEqual(['3 status', '4 play'])
  expect(
    waits('scale:', '  length: 24', 'strings:', '- D3 .030w', 'box:', '  # later', '  depth: 2'),
  ).toEqual([])
  expect(waits('scale:', '  fretted:', 'tags:')).toEqual(['4 scale.fretted', '5 tags'])
  expect(waits('nobody:', 'summary: a: b')).toEqual([])
})
