/** The table of commands: help, README and the way in come from it. */
import type { Readable, Writable } from 'node:stream';

/** What a command may touch; `main` and tests supply it. */
export interface CommandStreams {
  readonly input: Readable;
  readonly output: Writable;
  readonly errors: Writable;
}

/** Runs to its end and answers the exit status. */
export type Run = (args: readonly string[], streams: CommandStreams) => Promise<number>;

export interface Command {
  readonly name: string;
  /** One line, as help prints it. */
  readonly does: string;
  /** Loaded only when called, so that one command never pays for another. */
  readonly load: () => Promise<Run>;
}

export const commands: readonly Command[] = [
  {
    name: 'parse',
    does: 'notes to entries, a JSON line each; --explain prints the tree of rules',
    load: async () => (await import('./parse.js')).parse,
  },
  {
    name: 'help',
    does: 'these commands, and the settings',
    load: async () => (await import('./help.js')).help,
  },
  {
    name: 'when',
    does: 'phrases of time to days, a JSON line each',
    load: async () => (await import('./when.js')).when,
  },
  {
    name: 'forecast',
    does: 'a batch and earlier ones to when it will be ready and when to look, a JSON line each',
    load: async () => (await import('./forecast.js')).forecast,
  },
  {
    name: 'take',
    does: 'plants wanted and records to how many cuttings to take, a JSON line each',
    load: async () => (await import('./take.js')).take,
  },
  {
    name: 'frost',
    does: 'daily minima to the days of a given frost risk, a JSON line each',
    load: async () => (await import('./frost.js')).frost,
  },
  {
    name: 'schedule',
    does: 'plants wanted by a day to rounds of cuttings and the last day for them, a JSON line each',
    load: async () => (await import('./schedule.js')).schedule,
  },
  {
    name: 'backup',
    does: 'a consistent copy of the ledger to a file, also while the bot runs',
    load: async () => (await import('./backup.js')).backup,
  },
  {
    name: 'restore',
    does: 'a backup back in place of the ledger; refuses to put it over later entries unless told --over-newer',
    load: async () => (await import('./restore.js')).restore,
  },
  {
    name: 'learn',
    does: 'notes with their right entries to shared/likeness.json or, asked for neighbours, to shared/neighbours.json',
    load: async () => (await import('./learn.js')).learn,
  },
  {
    name: 'hear',
    does: 'voice notes to words, a JSON line a file (--context FILE: whose names to know)',
    load: async () => (await import('./hear.js')).hear,
  },
  {
    name: 'drills',
    does: 'faults brought about on purpose, and what must hold all the same; all of them, or those named',
    load: async () => (await import('./drills.js')).drills,
  },
  {
    name: 'demo',
    does: 'a season of an invented grower, run through in seconds: the talk, and the papers it yields',
    load: async () => (await import('./demo.js')).demo,
  },
  {
    name: 'replay',
    does: 'whole conversations on an empty ledger, to all that was said and the ledger at the end, a JSON line each',
    load: async () => (await import('./replay.js')).replay,
  },
  {
    name: 'draw',
    does: 'season, review, rooting or labels into a file; from the ledger or from --replay FILE',
    load: async () => (await import('./draw.js')).draw,
  },
  {
    name: 'export',
    does: 'the ledger to --out PATH as --format csv, ics or json; json is whole',
    load: async () => (await import('./export.js')).exportLedger,
  },
  {
    name: 'import',
    does: "a ledger, rows of entries or a station's daily minima into the ledger, saying first what that would do",
    load: async () => (await import('./import.js')).importLedger,
  },
  {
    name: 'doctor',
    does: 'checks settings, ledger, backups, clock, zones, speech, fonts and the way to the Bot API; exit 1 if anything is to mend',
    load: async () => (await import('./doctor.js')).doctor,
  },
  {
    name: 'bench',
    does: 'speed and memory as ratios against baselines in the same run; --json for machines',
    load: async () => (await import('./bench.js')).bench,
  },
];
