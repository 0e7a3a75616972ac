import {massPerLengthKgM} from './mass-per-length.ts'
import {noteFrequencyHz} from './note-frequency.ts'
import {massOfPullKgM} from './string-tension.ts'
import type {StringValues, Wire} from './string-wire.ts'

export interface StringMass {
  kgM: number
  from: 'mass' | 'tension' | 'plain' | 'wound'
}

/** Packets print the pull at concert pitch, whatever this build is tuned to. */
const packetReferenceHz = 440

/**
 * Say what a string weighs for its length (kg/m), and where that comes from: the packet's mass, the packet's pull at
 * the scale and note that it prints, or else the string's geometry.
 */
export function stringMass({mass, tension}: StringValues, wire: Wire | undefined): StringMass | undefined {
  if (mass) return {kgM: mass.kgM, from: 'mass'}
  if (tension?.pull && tension.scale && tension.note) {
    const hz = noteFrequencyHz(tension.note.midi, packetReferenceHz)
    return {kgM: massOfPullKgM(tension.pull.n, tension.scale.mm, hz), from: 'tension'}
  }
  const kgM = wire && massPerLengthKgM(wire)
  return kgM === undefined ? undefined : {kgM, from: wire?.wound ? 'wound' : 'plain'}
}
