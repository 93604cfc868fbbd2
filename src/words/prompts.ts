/** Prompts, their buttons, and the digest around them. */
import type { Digest } from '../outlook/digest.js';
import type { Due } from '../outlook/due.js';
import { dueReason } from './due-reason.js';
import { placeWords, temperatureWords } from './plants.js';
import { capital, dateWords, dayWords, listWords, many, type Speech } from './speech.js';

type Choice = readonly [label: string, value: string];

const choices: Readonly<Partial<Record<Due['kind'], readonly Choice[]>>> = {
  check: [
    ['All', 'all'],
    ['Some', 'yes'],
    ['None yet', 'none'],
  ],
  potOn: [
    ['Potted on', 'yes'],
    ['Not yet', 'notYet'],
  ],
  pinch: [
    ['Pinched', 'yes'],
    ['Not yet', 'notYet'],
  ],
  hardenOff: [
    ['Begun', 'yes'],
    ['Not yet', 'notYet'],
  ],
  plantOut: [
    ['Planted out', 'yes'],
    ['Not yet', 'notYet'],
  ],
  strike: [
    ['Taken', 'yes'],
    ['Not yet', 'notYet'],
  ],
};

/** Labels and values of a prompt's buttons; with the batch's label before each where a message asks about several. */
export function promptButtons(due: Due, label: string | null): readonly Choice[] {
  const own = [...(choices[due.kind] ?? []), ['Later', 'later'] as const];
  return label === null
    ? own
    : own.map(([words, value]) => [`${label} ${words.toLowerCase()}`, value] as const);
}

/** One question that wants an answer, with its reason. */
export function promptWords(due: Due, speech: Speech & { readonly asides?: readonly Due[] }): string {
  return [capital(askWords(due, speech)), ...asideWords(speech.asides ?? [])].join('\n');
}

function askWords(due: Due, speech: Speech): string {
  const name = nameOf(due);
  const where = due.place ? `, ${due.place}` : '';
  const reason = dueReason(due, speech);
  const because = reason === '' ? '' : `\n${capital(reason)}.`;
  switch (due.why.because) {
    case 'rootsExpected':
      return `${name}${where}: day ${due.why.day}, time to look for roots. How many of ${due.count} have rooted?${because}`;
    case 'rooted':
      return `${name}${where}: ${many(due.count ?? 0, 'rooted cutting')} to pot on. Done?${because}`;
    case 'grown':
      return `${name}${where}: potted on ${dayWords(due.why.pottedOn, speech)}, time to pinch above ${due.why.pinch.aboveLeafPairs} pairs of leaves. Done?`;
    case 'plantingNears':
      return `${name}${where}: begin to harden off, so that ${due.count} can go out about ${dateWords(due.why.plantOutOn, speech)}. Begun?${because}`;
    case 'hardened':
      return `${name}${where}: ${many(due.count ?? 0, 'plant')} may go out now. Planted?${because}`;
    case 'tooFew':
      return `${name}: ${due.why.want} wanted by ${dateWords(due.why.by, speech)}; ${many(due.why.take, 'more cutting')} by ${dateWords(due.bestBy, speech)} would make that likely. Taken? Say how many.${because}`;
    default:
      return tellWords(due, speech);
  }
}

/** The same as a line of a list. */
export function tellWords(due: Due, speech: Speech): string {
  const name = nameOf(due);
  switch (due.kind) {
    case 'check':
      return `${name}: look for roots`;
    case 'potOn':
      return `${name}: pot on ${due.count ?? ''}`.trim();
    case 'pinch':
      return `${name}: pinch`;
    case 'hardenOff':
      return `${name}: begin to harden off`;
    case 'plantOut':
      return `${name}: plant out ${due.count ?? ''}`.trim();
    case 'strike':
      return `${name}: take cuttings`;
    case 'clearOut':
      return `${name}: hardly any more will root; clear out what hasn’t`;
    case 'bringIn':
      return `${listWords(due.labels)}${due.place ? ` ${placeWords(due.place, 'in')}` : ''}: bring under cover before the first frost`;
    case 'frostWarning':
      return `${due.why.because === 'minimum' ? `${temperatureWords(due.why.celsius, speech)} reported. ` : ''}${warningWords(due)}`;
    case 'tend':
      return tendWords([due]);
    case 'reminder':
      return due.why.because === 'asked' ? due.why.text : name;
  }
}

/** "Frost may come: cover or bring in EF1 and CL1 (patio) tonight". */
export function warningWords({ labels, place }: Due): string {
  return `Frost may come: cover or bring in ${listWords(labels)}${place ? ` (${place})` : ''} tonight`;
}

/** "While you’re there: mist and air the propagator and EF2." */
function asideWords(asides: readonly Due[]): string[] {
  return asides.length === 0 ? [] : [`While you’re there: ${tendWords(asides)}.`];
}

function tendWords(dues: readonly Due[]): string {
  const isOpen = ({ why }: Due) => why.because === 'rooting' && !why.covered;
  const places = (some: readonly Due[]) =>
    listWords(some.map(({ place, labels }) => (place ? placeWords(place) : listWords(labels))));
  const [open, covered] = [dues.filter(isOpen), dues.filter((due) => !isOpen(due))];
  return [
    ...(covered.length > 0 ? [`mist and air ${places(covered)}`] : []),
    ...(open.length > 0 ? [`water sparingly, uncovered: ${places(open)}`] : []),
  ].join('; ');
}

export function remindWords(due: Due): string {
  return due.why.because === 'asked' ? `You asked me to remind you: ${due.why.text}` : nameOf(due);
}

/** The message of a day: by place, late first. */
export function digestWords({ parts, asides }: Digest, speech: Speech): string {
  const lines = parts.flatMap(({ place, dues }) => [
    ...(place ? [`${capital(place)}:`] : []),
    ...dues.map(
      (due) =>
        `${place ? '– ' : ''}${capital(due.kind === 'reminder' ? remindWords(due) : tellWords(due, speech))}${groundOf(due, speech)}${due.bestBy < speech.today ? ` (since ${dateWords(due.from, speech)})` : ''}`,
    ),
  ]);
  return ['Today:', ...lines, ...asideWords(asides)].join('\n');
}

/** What no prompt explains is explained where it is told. */
function groundOf(due: Due, speech: Speech): string {
  return due.kind === 'bringIn' || due.kind === 'clearOut' ? `: ${dueReason(due, speech)}` : '';
}

function nameOf({ labels, variety, crop }: Due): string {
  return [labels.length === 1 ? labels[0] : null, variety ?? crop].filter((each) => each).join(' ');
}
