/** Questions other than for a slot: repeats, what depends, which note, how many of some, a spoken draft, the set-up. */
import type { ReadNote } from '../../language/note.js';
import { justOnce } from '../../words/answers.js';
import { notMeant } from '../../words/doubted.js';
import { heardAgain } from '../../words/heard.js';
import { renameAll, renameOne } from '../../words/amend.js';
import { eraseBegun, eraseInGroup, eraseNothing } from '../../words/erase.js';
import { leftOut } from '../../words/bringing-in-words.js';
import { takeIn } from '../settings/bringing-in.js';
import { amend, putRightBy, setSlots } from '../correcting/amending.js';
import { takingBack } from '../books/history.js';
import { mayErase } from '../settings/instructing.js';
import { readIn } from '../reading/reading.js';
import { rename } from '../correcting/renaming.js';
import { drop } from './replying.js';
import { answerSetup } from '../settings/starting.js';
import { promptName } from './asking.js';
import { chooseBatch } from './choosing.js';
import { dayIn } from '../reading/day-in.js';
import { settle } from '../prompts/settling.js';
import type { Sitting } from '../sitting.js';
import { plantSaid } from '../reading/slots.js';
import type { Plant } from '../../ledger/entry.js';
import type { Line } from '../../ledger/posting.js';
import { named } from '../../ledger/reach.js';
import type { Ask } from '../talk.js';
import { dependantsOf } from '../correcting/undoing.js';
import { takenBack } from '../../words/undo.js';
import { briefly } from '../../words/receipts.js';
import { doneOf, speechOf, standingOn } from '../batches/deeds.js';
import { isLogged, postEntry, takeNote } from '../noting.js';
import { lineNamed } from './which-line.js';

type Yes = 'yes' | 'no' | null;

/** Whether the reply answers it; `text` may be words of its own or the words of its button. */
export function settleAsk(sitting: Sitting, ask: Ask, text: string, read: ReadNote): boolean {
  const { asked } = ask;
  const said = read.entries[0]?.entry;
  const value = said?.kind === 'answer' ? said.value : undefined;
  const yes: Yes = value === 'yes' ? 'yes' : value === 'no' || value === 'none' ? 'no' : yesIn(text);
  switch (asked.ask) {
    case 'slot':
      return false;
    case 'repeat':
    case 'dependants':
    case 'heard':
    case 'meant':
    case 'bringIn':
      if (asked.ask === 'repeat' && isSecondTime(text)) choose(sitting, ask, 0);
      else if (asked.ask === 'repeat' && isOnce(text)) choose(sitting, ask, null);
      else if (yes === null) return false;
      else choose(sitting, ask, yes === 'yes' ? 0 : null);
      return true;
    case 'howMany': {
      const rooted =
        typeof value === 'number' || value === 'all'
          ? value
          : said?.kind === 'check' && typeof said.rooted === 'number'
            ? said.rooted
            : null;
      if (rooted === null) return false;
      drop(sitting, ask);
      const [standing] = standingOn(sitting.ledger, [asked.line]);
      if (!standing) postEntry(sitting, { kind: 'check', batch: asked.batch, rooted }, ask.origin);
      else setSlots(sitting, [standing], { rooted });
      return true;
    }
    case 'change': {
      drop(sitting, ask);
      if (said?.kind === 'amend') amend(sitting, said, asked.lines);
      else if (typeof value === 'number')
        amend(sitting, { kind: 'amend', set: { count: value } }, asked.lines);
      else if (!recounts(sitting, read.entries, asked.lines)) return false;
      return true;
    }
    case 'whichLine': {
      // "Lost 2 Ember Fox in the propagator" is a note of its own.
      if (read.entries.some(({ entry }) => isLogged(entry) && entry.kind !== 'remark')) return false;
      const chosen = lineNamed(standingOn(sitting.ledger, asked.lines), text);
      if (chosen < 0) return false;
      choose(sitting, ask, chosen);
      return true;
    }
    case 'otherBatch': {
      const day = dayIn(text, sitting.origin.at, sitting.settings, 'past');
      const batch = chooseBatch(text, asked.labels, sitting.ledger, day);
      if (!batch) return false;
      choose(sitting, ask, asked.labels.indexOf(batch.label));
      return true;
    }
    case 'whichPrompt': {
      const lower = text.toLowerCase();
      const chosen = asked.occasions.findIndex((occasion) =>
        promptName(sitting, occasion)
          .split(' ')
          .some((word) => lower.split(/\W+/).includes(word.toLowerCase())),
      );
      if (chosen < 0) return false;
      choose(sitting, ask, chosen);
      return true;
    }
    case 'rename': {
      const all = /\ball\b|\bevery/i.test(text) || text === renameAll(asked.from);
      const one = /\bonly\b|\bjust\b|\bone\b/i.test(text) || text.startsWith(renameOne(''));
      if (all === one) return false;
      choose(sitting, ask, all ? 1 : 0);
      return true;
    }
    case 'erase':
      // Only its own words erase: a yes may be meant for something else.
      if (yes !== 'no') return false;
      choose(sitting, ask, null);
      return true;
    case 'setup':
      return answerSetup(sitting, ask, asked.step, text, read);
  }
}

/** Does what option `index` of the question says; null turns it down. */
export function choose(sitting: Sitting, ask: Ask, index: number | null): void {
  const { asked } = ask;
  if (asked.ask === 'erase' && !mayErase(sitting)) {
    sitting.reply.text.push(eraseInGroup(sitting.world.founder?.name ?? null));
    return;
  }
  drop(sitting, ask);
  switch (asked.ask) {
    case 'repeat':
      if (index === null) sitting.reply.text.push(justOnce);
      else takeNote(sitting, readIn(sitting, asked.text, { origin: ask.origin }), ask.origin);
      return;
    case 'dependants': {
      if (index === null) return;
      const lines = [...asked.dependants, ...asked.lines];
      const standing = standingOn(sitting.ledger, lines);
      const before = sitting.ledger;
      const first = takingBack(asked.lines);
      const amendments = [...takingBack(dependantsOf(sitting, first)).reverse(), ...first];
      if (sitting.amend(amendments).length > 0) return;
      sitting.reply.text.push(
        takenBack(standing.map((each) => briefly(doneOf(before, each), speechOf(sitting)))),
      );
      return;
    }
    case 'heard':
      if (index !== 0) sitting.reply.text.push(heardAgain);
      else sitting.draft = { ...asked, origin: ask.origin };
      return;
    case 'meant':
      if (index !== 0) sitting.reply.text.push(notMeant);
      else sitting.draft = { ...asked, origin: ask.origin, meant: true };
      return;
    case 'erase':
      if (index === null) sitting.reply.text.push(eraseNothing);
      else if (index === 1) {
        sitting.reply.text.push(eraseBegun);
        sitting.errands.push({ kind: 'erase' });
      } else {
        sitting.errands.push({ kind: 'export', format: 'json' });
        sitting.ask({ ask: 'erase' });
      }
      return;
    case 'bringIn':
      if (index === 0) takeIn(sitting, asked);
      else sitting.reply.text.push(leftOut);
      return;
    case 'whichLine': {
      const line = index === null ? undefined : asked.lines[index];
      const [standing] = line === undefined ? [] : standingOn(sitting.ledger, [line]);
      if (standing) setSlots(sitting, [standing], asked.set);
      return;
    }
    case 'otherBatch': {
      const label = index === null ? undefined : asked.labels[index];
      const standing = standingOn(sitting.ledger, [asked.line]);
      if (label !== undefined) setSlots(sitting, standing, { batch: label });
      return;
    }
    case 'whichPrompt': {
      const occasion = index === null ? undefined : asked.occasions[index];
      const prompt = sitting.talk.prompts.findLast((each) => each.occasion === occasion && each.open);
      if (prompt) settle(sitting, prompt, asked.value);
      return;
    }
    case 'rename': {
      if (index === 1) rename(sitting, asked.from, asked.to);
      const [standing] = standingOn(sitting.ledger, [asked.line]);
      if (index === 0 && standing)
        putRightBy(sitting, [
          { amends: asked.line, entries: [{ ...standing.entry, variety: asked.to } as never] },
        ]);
      return;
    }
    case 'slot':
    case 'howMany':
    case 'change':
    case 'setup':
      return;
  }
}

/** "No, that's two more", "a separate two". */
const isSecondTime = (text: string): boolean =>
  /\b(?:more|another|other|separate|different|new|fresh|extra|second (?:lot|batch)|two (?:lots|batches))\b/i.test(
    text,
  ) && !/\b(?:once|same|twice|signal|ignore|duplicate|not (?:another|again)|no more|no other)\b/i.test(text);

/** "Just the once", "pressed send twice", "ignore the second one". */
const isOnce = (text: string): boolean =>
  /\b(?:the once|once only|the one lot|only (?:the )?one|same (?:one|lot|message|thing)|(?:sent|send|pressed|hit|tapped|clicked|posted|went|gone|came) .{0,20}twice|double[- ](?:tap|click|post)(?:ped|ed)?|(?:ignore|scrap|skip|forget) (?:the |that )?(?:second|last|other)(?: one)?)\b/i.test(
    text,
  );

function yesIn(text: string): Yes {
  // "It happened twice, so yes".
  if (
    /^\s*(?:it|that|they|i did it|i did that|both) (?:happened|was|were|came|did) (?:twice|two times)\b|\bso yes\b/i.test(
      text,
    )
  )
    return 'yes';
  if (/^\s*(?:yes|yep|yeah|aye|y|ok|okay|sure|right|correct|again|another|a second time)\b/i.test(text))
    return 'yes';
  if (
    /^\s*(?:no|nope|nah|n|(?:just |only )?(?:once|(?:the )?(?:one|1) time|(?:the )?one)(?! (?:more|again|else|other))|the same|same ones?|(?:it )?(?:just )?sent twice|duplicate|wrong)\b/i.test(
      text,
    )
  )
    return 'no';
  return null;
}

/** "I took 9", of no plant, where the note that is to read otherwise tells of so many taken. */
function recounts(sitting: Sitting, [only, another]: ReadNote['entries'], lines: readonly Line[]): boolean {
  const { count } = (only?.entry ?? {}) as { readonly count?: unknown };
  if (!only || another || typeof count !== 'number' || !isLogged(only.entry)) return false;
  const { kind } = only.entry;
  if (named(plantSaid(only.entry as Plant, only.sources))) return false;
  if (!standingOn(sitting.ledger, lines).some(({ entry }) => entry.kind === kind)) return false;
  amend(sitting, { kind: 'amend', set: { count } }, lines, kind);
  return true;
}
