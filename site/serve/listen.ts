import type {RequestListener, Server} from 'node:http'
import {createServer} from 'node:http'

/**
 * Listen on this machine alone, under both of its own addresses, at `port` or the next free one above it.
 * Answers the port and what closes it.
 */
export async function listen(
  answer: RequestListener,
  port: number,
): Promise<{port: number; close: () => void}> {
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
