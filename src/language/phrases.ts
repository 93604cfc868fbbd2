/**
 * Patterns written as lists of phrases, a family of them a line: "how (did|have) (i|we) do". A pattern is built once, as
 * its file loads. In a line a plain bracket only holds alternatives together, " … " stands for whatever comes between
 * whole words, and all else is as in any pattern; `${…}` puts another list in its place.
 */

/** What a list is called with: the signs of a backquoted text, and what stands in its `${…}`. */
export type Listed = readonly [lines: TemplateStringsArray, ...parts: readonly string[]];

/** The alternatives of a list, divided by bars. */
export function alternatives(...[{ raw }, ...parts]: Listed): string {
  return raw
    .map((written, at) => asPattern(written) + (parts[at] ?? ''))
    .join('')
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .join('|');
}

/** The phrases of a list, or of a text that divides them by bars already. */
export type Phrases = readonly [divided: string] | Listed;

export function sourceOf(phrases: Phrases): string {
  const [first] = phrases;
  return typeof first === 'string' ? first : alternatives(...(phrases as Listed));
}

function asPattern(written: string): string {
  return written.replace(/(?<!\\)\((?!\?)/g, '(?:').replaceAll(' … ', String.raw`\b.*\b`);
}

/** The source of a group: any of these. */
export function anyOf(...list: Listed): string {
  return `(?:${alternatives(...list)})`;
}

/** The whole line is one of these. */
export function whole(...list: Listed): RegExp {
  return new RegExp(`^${anyOf(...list)}$`);
}

/** The line begins with one of these, in whatever words it goes on. */
export function beginning(...list: Listed): RegExp {
  return new RegExp(`^${anyOf(...list)}`);
}

/** The line opens with one of these, whole words. */
export function opening(...list: Listed): RegExp {
  return new RegExp(String.raw`^${anyOf(...list)}\b`);
}

/** The line closes with one of these, whole words. */
export function closing(...list: Listed): RegExp {
  return new RegExp(String.raw`\b${anyOf(...list)}$`);
}

/** One of these stands anywhere in the line, whole words. */
export function within(...list: Listed): RegExp {
  return new RegExp(String.raw`\b${anyOf(...list)}\b`);
}

/** Any of several patterns. */
export function either(...patterns: readonly RegExp[]): RegExp {
  return new RegExp(patterns.map(({ source }) => source).join('|'));
}

/** The alternatives of a pattern, without those inside its groups. */
export function divided(source: string): readonly string[] {
  const found: string[] = [];
  let depth = 0;
  let from = 0;
  for (let at = 0; at < source.length; at++) {
    const sign = source.charAt(at);
    if (sign === '(') depth++;
    else if (sign === ')') depth--;
    else if (sign === '|' && depth === 0) {
      found.push(source.slice(from, at));
      from = at + 1;
    }
  }
  return [...found, source.slice(from)];
}

/** A family of phrases said one by one: of "(can|could) you tell me", "can you tell me" and "could you tell me". */
export function spelled(family: string): readonly string[] {
  const [, before, group, optional, behind] =
    /^([^(]*)\(\?:([^()]*)\)(\??)(?![*+{?])(.*)$/.exec(family) ?? [];
  if (before === undefined || group === undefined || behind === undefined) return [family];
  return [...group.split('|'), ...(optional ? [''] : [])].flatMap((word) => spelled(before + word + behind));
}

/** The phrases of a list one by one. */
export function phrasesOf(...list: Listed): readonly string[] {
  return divided(alternatives(...list)).flatMap(spelled);
}

/** The words of a list that stand between spaces. */
export function wordsOf({ raw }: TemplateStringsArray): readonly string[] {
  return raw.join('').trim().split(/\s+/);
}
