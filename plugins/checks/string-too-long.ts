import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './check.ts'

/** A way from anchor to post that is longer than the string of a packet; told once, of the longest. */
export const stringTooLong: Check = {
  rule: 'string-too-long',
  find: ({values}, {strings = [], bridge, ...plan}) => {
    const [longest] = strings
      .flatMap(({name, lengthNeededMm, packetMm, anchorWithinMm}) =>
        lengthNeededMm === undefined || packetMm === undefined || lengthNeededMm <= packetMm
          ? []
          : [{name, lengthNeededMm, packetMm, anchorWithinMm}],
      )
      .sort((a, b) => b.lengthNeededMm - a.lengthNeededMm)
    if (!longest) return []
    const {name, lengthNeededMm, packetMm, anchorWithinMm = 0} = longest
    const found = `${name} needs ${writeLength(lengthNeededMm, plan, 'up')} of string from anchor to post, winds included; a packet holds about ${writeLength(packetMm, plan)}`
    const canMove = values.anchors?.at && bridge && anchorWithinMm > bridge.stationMm
    if (!canMove)
      return [
        {
          at: 'scale.length',
          message: `${found}: shorten the scale or the head, or buy strings made for long scales`,
        },
      ]
    const place = writeLength(anchorWithinMm, plan, 'down')
    return [
      {
        at: 'anchors.at',
        message: `${found}: anchors at ${place} would do, or strings made for long scales`,
        expected: [place],
      },
    ]
  },
}
