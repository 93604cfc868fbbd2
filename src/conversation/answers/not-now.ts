/** A reply that puts a prompt off without an answer: nobody has looked yet, or it cannot be told. */

const NOT_NOW = new RegExp(
  '^(?:(?:no|sorry|oh|um|er)[,.]? )?(?:' +
    [
      "(?:i )?(?:haven't|have not|didn't|did not|not) (?:had (?:a|the) )?(?:looked|look|checked|check|chance|time)(?: yet| today| at (?:it|them)(?: yet)?)?",
      'not sure(?: yet)?',
      "(?:i )?(?:don't|do not) know yet",
      'ask me (?:again )?(?:later|tomorrow)',
      "(?:i )?(?:can't|cannot) (?:tell|see|say)(?: yet)?",
      'too dark to (?:see|tell|say|look)',
      '(?:maybe )?tomorrow',
      'not now',
    ].join('|') +
    ')$',
);

export function putsOff(text: string): boolean {
  const plain = text.trim().toLowerCase().replaceAll('’', "'").replace(/[.!]$/, '');
  return NOT_NOW.test(plain);
}
