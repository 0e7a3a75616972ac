import {createServer, type RequestListener, type Server} from 'node:http'

/**
 * Listen on this machine alone, under both of its own addresses, at `port` or the next free one above it.
 * Answers the port and what closes it. Requests under any name but the machine's own are refused.
 */
export async function listen(
  answerOwn: RequestListener,
  port: number,
): Promise<{port: number; close: () => void}> {
  const answer: RequestListener = (request, response) => {
    if (isOwn(request.headers.host)) answerOwn(request, response)
    else response.writeHead(421).end()
  }
  for (let tried = port; tried < port + 200; tried++) {
    const four = await listenAt(answer, tried, '127.0.0.1')
    if (four === 'taken') continue
    const six = await listenAt(answer, tried, '::1')
    if (six === 'taken') {
      close(four)
      continue
    }
    return {
      port: tried,
      close: () => {
        close(four)
        close(six)
      },
    }
  }
  throw new Error(`No free port from ${port} to ${port + 199}.`)
}

/** A page from elsewhere can make a name of its own lead here, and read drafts under it: it asks by that name. */
const isOwn = (host = ''): boolean => /^(localhost|127\.0\.0\.1|\[::1\])(:\d+)?$/i.test(host)

/** A machine without the newer kind of address has only the older one: that is 'absent', not 'taken'. */
function listenAt(answer: RequestListener, port: number, host: string): Promise<Server | 'taken' | 'absent'> {
  return new Promise((resolve, reject) => {
    const server = createServer(answer)
    server.once('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'EADDRINUSE' || error.code === 'EACCES') resolve('taken')
      else if (error.code === 'EADDRNOTAVAIL' || error.code === 'EAFNOSUPPORT') resolve('absent')
      else reject(error)
    })
    server.listen(port, host, () => resolve(server))
  })
}

function close(server: Server | 'taken' | 'absent'): void {
  if (typeof server === 'string') return
  server.close()
  server.closeAllConnections()
}
