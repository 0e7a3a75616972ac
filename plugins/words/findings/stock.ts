import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {StockTrouble} from '../../plan/stock/stock-at-hand.ts'
import type {UnplacedRow} from '../../plan/stock/unplaced-rows.ts'
import {unplacedWords} from '../cut-list.ts'
import type {Ruler} from '../lengths.ts'
import {only, type Wording} from './wording.ts'

export function pieceUnknown({id, nearest}: StockTrouble): Wording {
  return {
    message: `there is no ${id} on the rack${nearest ? `; ${nearest} may be meant` : '; list it in rack.yaml, or under stock'}`,
    expected: only(nearest),
  }
}

export function pieceGone({kind, id, by, on}: StockTrouble): Wording {
  if (kind === 'cut')
    return {message: `${id} was used before, for ${by}: take another piece, or one of its offcuts`}
  return {
    message: on
      ? `${id} came into the shop on ${on}, after this build was started`
      : `${id} is an offcut that is not there yet when this build is started`,
  }
}

export function pieceReserved({id, by}: StockTrouble): Wording {
  return {
    message: `${id} is reserved for ${by} as well; the one that is started first takes it`,
  }
}

export function pieceDiffers({id, size, mm}: StockTrouble, ruler: Ruler): Wording {
  const there = writeLength(mm!, ruler)
  return {
    message: `${id} stands on the rack with a ${size} of ${there}: the same name is the same board, so mend one of the two, or give this one another name`,
    expected: [there],
  }
}

export function pieceTwice({id}: StockTrouble): Wording {
  return {
    message: `${id} is named twice, and a piece can be cut once: give the other one another name, or take one out`,
  }
}

export function clearOutside({id, mm}: StockTrouble, ruler: Ruler): Wording {
  if (mm === undefined)
    return {message: `the clear length of ${id} ends before it starts: give the nearer end first`}
  return {
    message: `the clear length of ${id} ends past the piece, which is ${writeLength(mm, ruler)} long`,
    expected: [writeLength(mm, ruler, 'down')],
  }
}

export function sizeMissing({id, size}: StockTrouble): Wording {
  return {message: `${id} has no ${size}, so it is left out of the cut list`}
}

export function partUnplaced(row: UnplacedRow, ruler: Ruler): Wording {
  const {wouldDo} = row
  const text = wouldDo && writeLength(wouldDo.mm, ruler, 'down')
  return {
    message: `no piece at hand gives ${unplacedWords(row, ruler)}; ${text ? `${text} would do` : 'the cut list says what to buy'}`,
    expected: only(text),
  }
}

export function tooManyParts({count, most}: {count: number; most: number}): Wording {
  return {message: `${count} parts are listed; a cut list is made for ${most} at most`}
}

export function unknownWood({wood, nearest}: {wood: string; nearest?: string | undefined}): Wording {
  return {
    message: `${wood} is not in the wood table${nearest ? `; was ${nearest} meant? Else` : ';'} give its own density and stiffness, or a loose name: hardwood, softwood, unknown`,
    expected: [nearest ?? 'unknown'],
  }
}
