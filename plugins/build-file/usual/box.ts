import {inch, inchMm} from '../../tables/units.ts'
import {type AssumptionRow, inches, practice} from './row.ts'

/** What a box and its bridge usually are, and how far the neck reaches over it. */
export const boxRows: readonly AssumptionRow[] = [
  {path: 'box.sides', value: (v) => (v.box ? inches(3 / 16) : undefined), why: practice, says: '3/16'},
  {path: 'box.top.thickness', value: (v) => (v.box ? inches(1 / 8) : undefined), why: practice, says: '1/8'},
  {path: 'box.back', value: (v) => (v.box ? inches(1 / 8) : undefined), why: practice, says: '1/8'},
  {
    path: 'bridge.on',
    value: (v) => (v.box || v.bridge ? (v.neck?.joins?.value === 'on top' ? 'neck' : 'top') : undefined),
    why: practice,
    says: 'neck where it joins on top, else top',
  },
  {
    path: 'bridge.from-tail',
    value: (v) => (v.box && !v.box.at && v.box.length ? {mm: v.box.length.mm / 5} : undefined),
    why: 'a fifth of the box’s length; common practice, no source',
    says: "a fifth of the box's length, where neither it nor box.at is given",
  },
  {
    path: 'neck.length',
    value: (v) => {
      const {scale, box, bridge, head, anchors} = v
      if (!scale?.length || !box?.length || !head?.length || v.neck?.joins?.value === 'end') return undefined
      const tail = box.at
        ? box.at.mm + box.length.mm
        : bridge?.['from-tail']
          ? scale.length.mm + bridge['from-tail'].mm
          : undefined
      if (tail === undefined) return undefined
      // Anchors further out need 1/4 in of wood behind them; a tailpiece hooks over the end.
      const anchor = anchors?.at?.mm ?? (anchors?.along ? tail - box.length.mm + anchors.along.mm : tail)
      const body = anchors?.body?.mm ?? anchors?.['string-hole']?.mm ?? 0
      const behind = anchors?.kind?.value === 'tailpiece' ? 0 : body / 2 + inch(1 / 4)
      return {mm: head.length.mm + Math.max(tail + inchMm, anchor + behind)}
    },
    why: 'the neck ends 1 in past the box, or 1/4 in past anchors further out; common practice, no source',
    says: 'as long as it must be, 1 in past the box',
  },
]
