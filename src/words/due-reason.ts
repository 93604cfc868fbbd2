/** Why something is due, in a few words that stand on their own. */
import { onOrAfter, type FrostDates } from '../horticulture/plant-out.js';
import type { PotOnSign } from '../horticulture/crops.js';
import type { Due, Why } from '../outlook/due.js';
import type { RootingOutlook } from '../outlook/rooting-outlook.js';
import { percent } from './rooting-reason.js';
import { dateWords, dayWords, spanWords, type Speech } from './speech.js';
import { temperatureWords } from './plants.js';

const signs: Readonly<Record<PotOnSign, string>> = {
  rootsAtHoles: 'pot them on when roots show at the holes',
  rootsAbout2cm: 'pot them on when the roots are 2–3 cm long',
  plantlets: 'pot them on when the plantlets can be handled',
};

type RootsExpected = Extract<Why, { readonly because: 'rootsExpected' }>;

/** The ground on which `due` stands, without a full stop; empty where the task says it. */
export function dueReason({ why }: Due, speech: Speech): string {
  switch (why.because) {
    case 'rootsExpected':
      return rootsExpected(why, speech);
    case 'nothingMore':
      return `none rooted by day ${why.day}; the chance of even one is ${percent(why.rooting.oneMoreChance)}`;
    case 'rooted':
      return `${why.rooted} of ${why.of} seen rooted${why.sign === null ? '' : `; ${signs[why.sign]}`}`;
    case 'grown':
      return `potted on ${dayWords(why.pottedOn, speech)}`;
    case 'plantingNears':
      return why.frost === null ? '' : frostRiskWords(why.frost, speech);
    case 'hardened':
      return [
        ...(why.since === null ? [] : [`hardening off since ${dayWords(why.since, speech)}`]),
        ...(why.frost === null ? [] : [frostRiskWords(why.frost, speech)]),
      ].join('; ');
    case 'tooFew':
      return why.living < why.want
        ? `${why.living === 0 ? 'none' : why.living} alive now`
        : `${why.living} alive now are enough with a chance of ${percent(why.chance)}`;
    case 'firstFrostNears':
      return `one autumn in ten has frost before ${dateWords(why.oneInTen, speech)}`;
    case 'minimum':
      return `${temperatureWords(why.celsius, speech)} reported ${dayWords(why.on, speech)}`;
    case 'rooting':
    case 'asked':
      return '';
  }
}

/**
 * "likely ready 14–22 Mar (7 of 9 earlier batches here took 11–16 days)"; doubt is said where there is some, and why
 * nobody should look before spring.
 */
export function rootsExpected({ rooting, rested }: RootsExpected, speech: Speech): string {
  const { ready, everChance, grounds } = rooting;
  const winter = rested ? 'left undisturbed over winter; ' : '';
  const doubt = everChance < 0.75 ? `, if at all (${percent(everChance)})` : '';
  const range =
    ready === null ? '' : `likely ready ${spanWords({ from: ready.p10, to: ready.p90 }, speech)}${doubt} `;
  return `${winter}${range}(${groundsWords(grounds)})`;
}

/** "7 of 9 earlier batches here took 11–16 days", or that it is a starting guess. */
export function groundsWords({
  usualDays: [low, high],
  usualFrom,
  earlier,
  batches,
  here,
  temperatures,
}: RootingOutlook['grounds']): string {
  const warmth = temperatures ? ', warmth allowed for' : '';
  if (earlier !== null) {
    const days = earlier.from === earlier.to ? `${earlier.from}` : `${earlier.from}–${earlier.to}`;
    const which = `earlier ${batches === 1 ? 'batch' : 'batches'}${here ? ' here' : ''}`;
    return `${earlier.within} of ${batches} ${which} took ${days} days${warmth}`;
  }
  const usual = { table: 'is usual', grower: 'by your word', anyCutting: 'for most soft cuttings' }[
    usualFrom
  ];
  return `${low}–${high} days ${usual}, a starting guess${warmth}`;
}

/** "frost after 5 May in one year of two, after 21 May in one of ten"; before, in autumn. */
export function frostRiskWords({ half, evenChance, oneInTen }: FrostDates, speech: Speech): string {
  const when = half === 'spring' ? 'after' : 'before';
  // The day of any year: none is named.
  const on = (monthDay: string) => {
    const day = onOrAfter(monthDay, speech.today);
    return dateWords(day, { ...speech, today: day });
  };
  if (oneInTen === null) return `frost ${when} then in fewer than one year of ten`;
  if (evenChance === null) return `frost ${when} ${on(oneInTen)} in one year of ten`;
  return `frost ${when} ${on(evenChance)} in one year of two, ${when} ${on(oneInTen)} in one of ten`;
}
