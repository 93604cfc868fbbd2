/** The first stage: any text to plain characters that the tokeniser knows, without what only a screen needs. */
import { spelling } from './lexicon.js';

// Soft hyphens, zero-width and direction marks, variation selectors and the keycap frame carry no meaning in a note.
const INVISIBLE = /[\p{Cf}\p{Variation_Selector}\p{Me}]/gu;
const FRACTIONS: Readonly<Record<string, string>> = { '½': '.5', '¼': '.25', '¾': '.75' };

const PICTOGRAPHS = /[\p{Extended_Pictographic}\p{Regional_Indicator}\p{Emoji_Modifier}]+/gu;

/** Thumbs and ticks that answer a prompt by themselves; any other pictograph is a pause. */
const ANSWERING: ReadonlyMap<string, string> = new Map([
  ['👍', 'yes'],
  ['✅', 'yes'],
  ['✔', 'yes'],
  ['👌', 'yes'],
  ['👎', 'no'],
  ['❌', 'no'],
]);

/** "6 pots @ 5": what each holds, where nothing is sold. */
const CONTAINERS_AT = /(\b(?:pot|tray|module|cell|punnet|jar|flat)s) ?@ ?(?=\d{1,3}(?![\d.p]))/giu;
const SELLS = /\b(?:sold|sell|selling|flogged)\b/iu;

/** "C.frame", "g.h.", "p. tunnel": a letter for a word, with a stop where others write a stroke. */
const STOPPED = /(?<![\p{L}\d.'/])(\p{L})\.( ?)(\p{L}{1,10})(?![\p{L}\d])(?:(?<=\.\p{L})\.)?/giu;

/** "Del. in: 104 plugs", "del. 84 plugs"; no "del. that". */
const DELIVERY =
  /\bdel(?:iv)?(?:\. ?|:? )(?=(?:in|out|due|ex|from|to|note|today|tomorrow|yesterday|arr|\d+)\b|:)/giu;

/** Scots "the morn", which is the day to come, and "the morn's nicht"; "in the morn" is its beginning. */
const THE_MORN =
  /(?<!\b(?:in|of|all|through|on|by|during|early) )\bthe morn(?:'?s (morn(?:ing)?|night|nicht))?\b(?!')/giu;

/** Characters of a plain keyboard, as most notes are written in; the lone backtick is a quote. */
const KEYBOARD = /^[\n\w !"#$%&'()*+,./:;<=>?@[\\\]^{|}~-]*$/;

/** "LOST TWO OVERNIGHT": no small letter, and two long words, which labels and initials are not. */
const isShouted = (text: string): boolean =>
  !/\p{Ll}/u.test(text) && (text.match(/\p{Lu}{3,}/gu)?.length ?? 0) > 1;

/** Words that only somebody who gives every word a capital writes with one. */
const SMALL =
  /(?<=\s)(?:The|Of|In|To|And|A|For|At|From|With|Into|On|Off|Up|Out|By|Were|Was|Is|Are|Have|Has|Them|It|All)(?=\s|$)/gu;

/** "Potted The Six On": where every word has a capital, it tells no name from a word. */
const isTitled = (text: string): boolean =>
  !/(?<![\p{L}\d'’])\p{Ll}/u.test(text) && (text.match(SMALL)?.length ?? 0) > 1;

/**
 * Text of any origin in the characters of a plain keyboard: digits ASCII, quotes and dashes straight, pictographs a
 * full stop (a bare thumb its word), one space between words. Runs in time linear in the text.
 */
export function normalise(written: string): string {
  const text = isShouted(written) || isTitled(written) ? written.toLowerCase() : written;
  if (KEYBOARD.test(text)) return spelledOut(text.replace(/[ \n]{2,}/g, asOneGap));
  const bare = text.replace(INVISIBLE, '').trim();
  return ANSWERING.get(bare.replace(/[\u{1F3FB}-\u{1F3FF}]/gu, '')) ?? spelledOut(onKeyboard(bare));
}

const asOneGap = (gap: string): string => (/[\n\r\u2028\u2029]/u.test(gap) ? '\n' : ' ');

/** The nearest characters of a keyboard. */
function onKeyboard(text: string): string {
  return text
    .replace(/(\d?)\s?([½¼¾])/gu, (_, digit: string, fraction: string) =>
      digit === ''
        ? fraction === '½'
          ? ' half '
          : ` 0${FRACTIONS[fraction]} `
        : `${digit}${FRACTIONS[fraction]}`,
    )
    .replace(/[ºᵒ˚]/gu, '°')
    .normalize('NFKC')
    .replace(/[\u2018\u2019\u201A\u201B\u2032\u02BC`´]/gu, "'")
    .replace(/[\u201C-\u201F\u2033«»]/gu, '"')
    .replace(/[\u2010\u2011]/gu, '-')
    .replace(/[\p{Cc}\p{Zs}\p{Zl}\p{Zp}]+/gu, asOneGap)
    .replace(/ ?[\u2012-\u2015] ?/gu, (dash, at: number, whole: string) =>
      /\d$/u.test(whole.slice(Math.max(0, at - 1), at)) &&
      /^\d/u.test(whole.slice(at + dash.length, at + dash.length + 1))
        ? '-'
        : ' - ',
    )
    .replace(/\u2212(?=\d)/gu, '-')
    .replace(/[→⇒➔➜➡►▶]/gu, ' -> ')
    .replace(PICTOGRAPHS, (_, at: number, whole: string) => {
      // What goes on in lower case goes on in the same breath.
      const next = whole.slice(at).replace(PICTOGRAPHS, '').trimStart();
      // … and so does what stands behind a dash.
      return /^(?:\p{Ll}|- )/u.test(next) ? ' , ' : ' . ';
    });
}

/** Without the full stops, strokes and commas of abbreviations and decimals, which end nothing. */
function spelledOut(text: string): string {
  let plain = text.includes('.') ? withoutStops(text) : text;
  if (/\bca \d/iu.test(plain)) plain = plain.replace(/\bca (?=\d)/giu, 'circa ');
  // "Checked them to day", but "from day to day".
  if (/\bto (?:day|night|morrow)\b/iu.test(plain))
    plain = plain.replace(/(?<!\bday )\bto (day|night|morrow)\b/giu, 'to$1');
  plain = plain.replace(/\bthis ([ap])m\b/giu, (_, half: string) => halfOfDay(half));
  plain = plain.replace(DELIVERY, 'delivery ');
  if (plain.includes('@'))
    plain = plain.replace(CONTAINERS_AT, (said: string, containers: string) =>
      SELLS.test(text) ? said : `${containers} x `,
    );
  if (plain.includes('/')) plain = plain.replace(/(^|\s)w\/(?=\s)/giu, '$1with');
  if (plain.includes(',')) plain = plain.replace(/(\d),(\d)(?=\s?(?:°|degrees?\b|grad\b))/gu, '$1.$2');
  if (/\bthe morn\b|\bthe morns\b/iu.test(plain))
    plain = plain.replace(THE_MORN, (_, part: string | undefined) =>
      part === undefined ? 'tomorrow' : `tomorrow ${/^m/i.test(part) ? 'morning' : 'night'}`,
    );
  if (plain.includes('1')) plain = plain.replace(/\b1st (?=thing\b)/giu, 'first ');
  return plain.trim();
}

/** "6 p.m.", "this a.m.", "ca. 40", "c.frame". */
const withoutStops = (text: string): string =>
  text
    .replace(STOPPED, (said: string, letter: string, gap: string, rest: string, at: number) => {
      const stroke = `${letter}/${rest}`;
      // "G.H. Smith".
      if (/^\p{Lu}\.\p{Lu}\. \p{Lu}/u.test(text.slice(at, at + 6))) return said;
      const isKnown = spelling(stroke.toLowerCase()) !== undefined && (gap === '' || rest.length > 3);
      return isKnown ? stroke : said;
    })
    .replace(/(?<![\p{L}\d])(\d{1,2}(?:[:.]\d\d)?)\s?([ap])\.\s?m\b\.?/giu, '$1$2m')
    .replace(/\b(?:this )?([ap])\.\s?m\b\.?/giu, (_, half: string) => halfOfDay(half))
    .replace(/\bca?\. ?(?=\d)/giu, 'circa ')
    // "Gave two to Mrs. Abbery".
    .replace(/\b(mrs?|ms|dr)\. ?(?=\p{L})/giu, '$1 ');

const halfOfDay = (letter: string): string => (/^a/i.test(letter) ? 'this morning' : 'this afternoon');
