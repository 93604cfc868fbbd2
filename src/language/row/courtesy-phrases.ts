/** The words of courtesies: what opens a note, what closes one, and what belongs to neither. */
import { byFirstWord, type PhrasesByWord } from '../phrases-by-word.js';
import { wordsOf } from '../phrases.js';

/** One phrase a line, found by its first word; `backwards`: by its last, its words read from the end. */
const phrases = (rows: string, backwards = false): PhrasesByWord =>
  byFirstWord(
    rows
      .trim()
      .split('\n')
      .map((row) => (backwards ? row.trim().split(' ').reverse() : row.trim().split(' '))),
  );

export const GREETINGS = new Set(wordsOf`hi hello hey hiya heya howdy gday g'day`);
export const DAYTIMES = new Set(wordsOf`morning afternoon evening`);
export const WHOM = new Set(
  wordsOf`there all both everyone everybody folks team lads guys bot slipnote mate love pet again you diary`,
);
/** Whom a "no" is said to: "no love, it was three". */
export const DEARS = new Set(
  wordsOf`love pet dear darling hen duck pal mate son petal sweetheart lovey flower treasure chick lad lass boss`,
);
export const SAYS_NO = new Set(wordsOf`no nope nah yes yeah aye`);
/** What goes on straight behind whom it is said to. */
export const GOES_ON = new Set(wordsOf`it it's its that that's i we they there she he only`);

/** "Ah no, only 2", "oh wait": a sigh before what takes something back. */
export const SIGHS = new Set(wordsOf`ah oh ach och argh eh hm hmm lord god gosh heavens jaysus`);
export const TAKES_BACK = new Set(wordsOf`no wait sorry hang hold actually`);

/** They open a note whatever follows. */
export const OPENINGS = phrases(`
  fyi
  btw
  by the way
  be a love and
  be a dear and
  be a pet and
  do me a favour and
  quick one
  quick note
  quick update
  a quick one
  just a quick one
  just a quick note
  just so you know
  just to let you know
  to let you know
  just to say
  for the record
  if you're keeping score
  if you are keeping score
  if anyone's counting
  in case you're wondering
  dear diary
  heads up
  sad day
  sad news
  bad news
  good news
  great news
  i ought to add that
  i should add that
  i should say that
  i must say
  i have to say
  i must report that
  i must report
  i have to report
  i have to report that
  on reflection
  ok so
  okay so
  right so
  yay
  hooray
  woohoo
  phew
  haha
  lol
`);
/** They lean on what was said before, and matter where a talk goes on. */
export const LEANS = phrases(`
  oh
  oh and
  oh also
  also
  and also
  anyway
  anyways
  one more thing
`);
/** They open one before a mark of writing. */
export const HEADINGS = phrases(`
  update
  small update
  news
  latest
  log
  please log
  pls log
  quick question
  late entry
  ps
  right
  right then
  righto
  ok
  okay
  ok then
  ok lads
  so
`);
/** "Well rooted", "well done": how, and no opening. */
export const HOW =
  /^(?:rooted|watered|soaked|fed|drained|hardened|established|grown|fertilised|lit|mixed|insulated|done|away|over|up|out|gone|chuffed|pleased|happy|behind|ahead|past|before|after|as|on|in|into|under|below|above|worth|and|then)$/;
/** Without their apostrophes, which thumbs leave out. */
export const CLOSINGS = phrases(
  `
  x
  xx
  xxx
  thanks
  thank you
  many thanks
  thanks a lot
  thanks very much
  ta
  ta very much
  ta muchly
  thx
  cheers
  lol
  haha
  phew
  yay
  hooray
  hurrah
  woohoo
  at last
  finally
  by the way
  btw
  fyi
  as it happens
  tbh
  tbf
  imo
  ngl
  to be honest
  to be fair
  im afraid
  i am afraid
  sadly
  alas
  honestly
  thats me
  that is me
  thats me done
  that is me done
  thats me done for the day
  that is me done for the day
  thats me for the day
  thats it for now
  thats it for today
  thats all for now
  thats all for today
  done for the day
  pleased with that
  happy with that
  chuffed with that
  pleased with those
  happy with those
  pleased with them
  happy with them
  well pleased
  well chuffed
  over and out
`,
  true,
);
/** What may lead to a closing and goes with it. */
export const LEADS_TO = new Set(wordsOf`and so i'm im am we're very really quite`);

/** Words with which a question or a bidding begins. */
export const ASKING = new Set(
  wordsOf`what what's what've where where's where've when when's how how's how're how've which who who's remind`,
);
export const ASKS_WHETHER = new Set(wordsOf`is are has have do does did can could am was were`);
export const ASKED_OF = new Set(wordsOf`i we you the it there they any my`);
