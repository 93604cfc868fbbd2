/** Texts that nobody at a bench would send: what they are, and what may be logged of them. */
import type { Entry, Plant } from '../../../ledger/entry.js';

export interface HostileText {
  readonly text: string;
  /** Whether this may come of it; without, nothing may. */
  readonly allows?: (entry: Entry) => boolean;
  /** The number that it tells. */
  readonly count?: number;
}

/** A repeatable number from 0 up to, not including, 1. */
type Chance = () => number;

/** UTF-16 units, says the Bot API. */
const LONGEST = 4096;
const PLANES = 17;

const markup = [
  "Robert'); DROP TABLE journal;--",
  "' OR '1'='1' UNION SELECT settings FROM ledgers --",
  '"; DELETE FROM ledgers; PRAGMA user_version = 99; --',
  '__defineGetter__',
  'hasOwnProperty.call.valueOf',
  '{"prototype":{"admin":true}}',
  '{"kind":"strike","variety":"Forged","count":9,"date":"2026-04-01","label":"FO1"}',
  '{"amends":1,"entries":[]}',
  '<script>alert(document.cookie)</script>',
  '<b>bold</b> <a href="tg://user?id=7">you</a>',
  '*bold* _italic_ [link](javascript:alert) `code`',
  '${7*7} {{7*7}} <%= 7*7 %> #{7*7}',
  '%s%s%s%n%x %00 \u0000 \\u0000',
  '../../../etc/passwd',
  '=HYPERLINK("http://evil.example","click")',
  '@slip_bot @slip_bot @slip_bot',
  '/start@other_bot xyz',
  '/start b___proto__',
] as const;

/** Names that a program might take for something else; the letters of each are what a ledger may hold of it. */
const names = [
  '__proto__',
  'constructor',
  'toString',
  "O'Drop Table",
  '<b>Ruby</b>',
  '*Ruby*',
  '=SUM(A1)',
  '+cmd|calc',
  '${jndi}',
  '\u202EybuR\u202C',
  'Ru\u200Bb\u200Dy\uFEFF',
  '🌱🪴',
  'שלום',
  'Zażółć Gęślą',
  '\u{10FFFD}\u{F0000}',
] as const;

const oddNumbers = [
  '-5',
  '0',
  '1e9',
  '99999999999999999999',
  '٣',
  '３',
  '½',
  '0x10',
  'NaN',
  'Infinity',
] as const;

/** `foreign` are labels of batches in ledgers that are not this chat's. */
export function hostileText(chance: Chance, foreign: readonly string[]): HostileText {
  const pick = <T>(list: readonly T[]): T => list[Math.floor(chance() * list.length)] as T;
  return pick([
    planes,
    planes,
    planes,
    marked,
    foreign.length > 0 ? labelled : marked,
    foreign.length > 0 ? labelled : marked,
    decorated,
    decorated,
    namedOddly,
    countedOddly,
    longLine,
  ])();

  function planes(): HostileText {
    const plane = Math.floor(chance() * PLANES);
    const length = 1 + Math.floor(chance() * 200);
    const points = Array.from({ length }, () => plane * 0x10000 + Math.floor(chance() * 0x10000));
    // Surrogates of plane 0 stand alone as they come. Digits would be an answer to whatever is being asked.
    return { text: withoutDigits(points.map((point) => String.fromCodePoint(point)).join('')) };
  }

  function marked(): HostileText {
    return { text: pick(markup) };
  }

  /** Acts on, and questions about, what stands in another's ledger. */
  function labelled(): HostileText {
    const label = pick(foreign);
    return pick<HostileText>([
      { text: `${label}?` },
      { text: `lost 2 of ${label} to rot`, allows: onNoBatch({ kind: 'loss', count: 2, cause: 'rot' }) },
      { text: `${label} has rooted 4`, allows: onNoBatch({ kind: 'check', rooted: 4 }) },
      { text: `how many ${label} are there` },
      { text: `where is ${label}` },
      { text: `potted on ${label} into 9cm`, allows: onNoBatch({ kind: 'potOn', potSize: '9cm' }) },
      { text: `${label} is called Stolen Fire` },
      { text: `moved ${label} to the skip`, allows: onNoBatch({ kind: 'move', place: 'skip' }) },
      { text: `/start b_${label}` },
      { text: `what happened to ${label} last week` },
      { text: `labels for ${label}` },
    ]);
  }

  /** A good note, strewn with what cannot be seen. */
  function decorated(): HostileText {
    const count = 2 + Math.floor(chance() * 8);
    const note = `took ${count} tip cuttings of Plain Jane dahlia in one pot`;
    const mark = pick([
      '\u200B',
      '\u200D',
      '\uFEFF',
      '\u202E',
      '\u2066',
      '\u0301',
      '\u00AD',
      '\u{E0041}',
      '\u0000',
    ]);
    const words = note.split(' ');
    const text = pick([
      () => words.join(` ${mark}`),
      () => words.join(mark),
      () => [...note].join(mark),
      () => `${mark}${note}${mark}`,
      () => `<i>${note}</i>`,
      () => `*${note}*; DROP TABLE journal`,
      () => note.toUpperCase(),
      () => [...note].map((letter) => fullWidth(letter)).join(''),
      () => `${note}\n`.repeat(3).trim(),
    ])();
    return { text, count, allows: strikeOf(count, text) };
  }

  function namedOddly(): HostileText {
    const count = 2 + Math.floor(chance() * 8);
    const text = `took ${count} tip cuttings of ${pick(names)} dahlia in one pot`;
    return { text, count, allows: strikeOf(count, text) };
  }

  function countedOddly(): HostileText {
    const number = pick(oddNumbers);
    const text = `took ${number} tip cuttings of Plain Jane dahlia in one pot`;
    const value = number === '٣' ? 3 : Number(number.normalize('NFKC'));
    const isCount = Number.isInteger(value) && value > 0;
    return {
      text,
      ...(isCount ? { count: value } : {}),
      allows: (entry) =>
        entry.kind === 'strike' && (entry.count === undefined || (isCount && entry.count === value)),
    };
  }

  function longLine(): HostileText {
    const unit = pick([
      'a',
      'took ',
      '9'.repeat(3),
      'ten of ',
      '((((',
      '\u0301',
      '🌱',
      'lost all the ',
      'and then, or not, ',
      'monday to friday ',
      '\u202E',
      '-',
      'a pot of ',
      '1/2/3/',
    ]);
    const text = unit.repeat(Math.ceil(LONGEST / unit.length)).slice(0, LONGEST);
    // "Took took took" and "lost all the lost all the" may be asked about, and the answer makes a note of them.
    const lost = onNoBatch({ kind: 'loss', count: 'all' });
    return {
      text,
      allows: (entry) => (entry.kind === 'strike' && entry.count === undefined) || lost(entry),
    };
  }
}

/** The act that a note tells of what is not there: of itself nothing comes of it, but an answer may name a batch that is. */
function onNoBatch(told: Entry): (entry: Entry) => boolean {
  return (entry) => {
    const own = entry as unknown as Readonly<Record<string, unknown>>;
    const { variety, crop, batch } = entry as Plant;
    return (
      [variety, crop, batch].every((said) => said === undefined) &&
      Object.entries(told).every(
        ([slot, value]) => own[slot] === value || (slot !== 'kind' && own[slot] === undefined),
      )
    );
  };
}

/** The strike that such a note tells, or a part of it: nothing more, and no other number. */
function strikeOf(count: number, text: string): (entry: Entry) => boolean {
  const said = letters(text);
  return (entry) =>
    entry.kind === 'strike' &&
    (entry.count === undefined || entry.count === count) &&
    (entry.pots === undefined || entry.pots === 1) &&
    (entry.crop === undefined || entry.crop === 'dahlia') &&
    (entry.variety === undefined || said.includes(letters(entry.variety)));
}

/** Small letters, signs and figures alone, so that what stands between them does not count. */
export function letters(text: string): string {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}\p{S}]/gu, '');
}

function withoutDigits(text: string): string {
  return text.replace(/\p{N}/gu, '#');
}

function fullWidth(letter: string): string {
  const code = letter.charCodeAt(0);
  return code > 0x20 && code < 0x7f ? String.fromCharCode(code + 0xfee0) : letter;
}
