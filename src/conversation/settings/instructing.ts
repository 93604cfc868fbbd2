/** Follows an instruction: settings, putting off, splitting and joining, what is fetched from outside. */
import { eraseInGroup } from '../../words/erase.js';
import { isTimeOfDay, isZone } from '../../calendar/zone.js';
import type { Instruction } from '../../language/instructions/instruction.js';
import { batchesOf } from '../batches/batches-meant.js';
import { lotsTold } from '../batches/lots-told.js';
import type { Plant } from '../../ledger/entry.js';
import { refusalWords } from '../../words/asks.js';
import {
  digestSet, frostSet, mergeNothing, orderSet, placeUnknown, quietSet, unitsSet, wordingSet, zoneSet,
} from '../../words/instructions.js'; // prettier-ignore
import { speechOf } from '../batches/deeds.js';
import type { LedgerSettings } from './ledger-settings.js';
import { searchRemarks } from '../questions/searching.js';
import type { Sitting } from '../sitting.js';
import { snooze } from '../prompts/snoozing.js';
import { split } from '../batches/splitting.js';
import { sayMissed } from '../prompts/missed.js';
import { zoneOfPlace } from './zone-of-place.js';
import type { Posting } from '../../ledger/posting.js';

export function follow(sitting: Sitting, instruction: Instruction): void {
  switch (instruction.kind) {
    case 'setZone': {
      const zone = instruction.zone ?? zoneOfPlace(instruction.place ?? '');
      if (zone === null || zone === undefined || !isZone(zone))
        return say(sitting, placeUnknown(instruction.place ?? ''));
      return set(sitting, { zone, place: instruction.place ?? sitting.settings.place }, zoneSet(zone));
    }
    case 'setFrost': {
      const { last, first } = instruction;
      return set(
        sitting,
        {
          ...(last === undefined ? {} : { lastFrost: last }),
          ...(first === undefined ? {} : { firstFrost: first }),
        },
        frostSet(last, first, speechOf(sitting)),
      );
    }
    case 'setDigest':
      if (instruction.at !== 'off' && !isTimeOfDay(instruction.at)) return;
      return set(sitting, { digestAt: instruction.at }, digestSet(instruction.at));
    case 'setQuiet':
      return set(
        sitting,
        { quiet: [instruction.from, instruction.to] },
        quietSet(instruction.from, instruction.to),
      );
    case 'setUnits':
      return set(sitting, { units: instruction.units }, unitsSet[instruction.units]);
    case 'setWording':
      return set(sitting, { wording: instruction.wording }, wordingSet[instruction.wording]);
    case 'setDateOrder':
      return set(sitting, { dateOrder: instruction.order }, orderSet[instruction.order]);
    case 'snooze':
      return snooze(sitting, instruction);
    case 'split':
      return postSplit(sitting, split(sitting, instruction));
    case 'merge':
      return merge(sitting, instruction.plants);
    case 'teach':
      return post(sitting, {
        kind: 'teach',
        crop: instruction.crop,
        daysToRoot: instruction.daysToRoot,
        date: sitting.today,
      });
    case 'search':
      return searchRemarks(sitting, instruction.words);
    case 'missed':
      return sayMissed(sitting);
    case 'erase':
      return mayErase(sitting)
        ? sitting.ask({ ask: 'erase' })
        : say(sitting, eraseInGroup(sitting.world.founder?.name ?? null));
    case 'labels':
    case 'picture':
    case 'export':
    case 'invite':
    case 'switchLedger':
      sitting.errands.push(instruction);
  }
}

/** In a chat of their own who asks erases what is theirs; a group's ledger only its owner does. */
export function mayErase({ world, origin }: Sitting): boolean {
  return !world.group || world.founder?.id === origin.from;
}

function say(sitting: Sitting, text: string): void {
  sitting.reply.text.push(text);
}

function set(sitting: Sitting, change: Partial<LedgerSettings>, words: string): void {
  sitting.settings = { ...sitting.settings, ...change };
  say(sitting, words);
}

function post(sitting: Sitting, posting: Posting): void {
  const line = sitting.post(posting);
  if (typeof line === 'number') sitting.reply.lines.push(line);
  else say(sitting, refusalWords(line, null, speechOf(sitting)));
}

function postSplit(sitting: Sitting, told: Posting | string): void {
  if (typeof told === 'string') say(sitting, told);
  else post(sitting, told);
}

function merge(sitting: Sitting, plants: readonly Plant[]): void {
  const named = plants.length > 0 ? plants : lastSpokenOf(sitting);
  const all = [...new Set(named.flatMap((plant) => batchesOf(sitting, plant)))];
  const batches = lotsTold(sitting.text, all);
  const [into] = batches;
  if (!into || batches.length < 2) return say(sitting, mergeNothing);
  post(sitting, {
    kind: 'merge',
    batches: batches.map(({ label }) => label),
    into: into.label,
    date: sitting.today,
  });
}

/** "Merge those two": the plant of the last note. */
function lastSpokenOf({ ledger }: Sitting): readonly Plant[] {
  const [label = ''] = ledger.standing.at(-1)?.touched ?? [];
  const variety = ledger.batches.get(label)?.variety;
  return variety == null ? [] : [{ variety }];
}
