/** What a rule of instructions is: a pattern over the whole note, and what it makes of its words. */
import type { TimeOfDay } from '../../../calendar/zone.js';
import type { Day } from '../../../calendar/day.js';
import type { Plant } from '../../../ledger/entry.js';
import type { Instruction } from '../../instructions/instruction.js';
import type { Piece } from '../../pieces/pieces.js';

/** What a rule of instructions may look at. */
export interface InstructionWords {
  /** The whole note's words in one lower-case line. */
  readonly line: string;
  readonly pieces: readonly Piece[];
  readonly plants: readonly Plant[];
  readonly numbers: readonly number[];
  /** Hours named, in order. */
  readonly times: readonly TimeOfDay[];
  readonly until: Day | undefined;
  readonly written: string;
  /** A place that nobody knows yet, told by "in the …" and the like among these pieces. */
  readonly placeWithin: (from: number, to: number) => string | undefined;
  /** The date of a frost as `MM-DD`. */
  readonly monthDay: string | undefined;
}

/** A record named like the phrase that it accepts; undefined where the words come to nothing. */
export interface InstructionRule {
  readonly name: string;
  readonly pattern: RegExp;
  readonly read: (words: InstructionWords, match: RegExpExecArray) => Instruction | undefined;
}

/** The plant of an instruction that may name one. */
export const plantNamed = ({ plants }: InstructionWords): { plant?: Plant } =>
  plants[0] ? { plant: plants[0] } : {};
