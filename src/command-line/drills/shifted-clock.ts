/** A machine clock that is wrong on purpose: for a program that is started with these arguments of node. */

/** Adds to the program's clock what stands in the file, in milliseconds, as it stands there at each moment. */
export function shiftedClock(file: string): readonly string[] {
  const preload = `
    import { readFileSync } from 'node:fs';
    const machine = Date.now.bind(Date);
    let shift = 0;
    const look = () => { try { shift = Number(readFileSync(${JSON.stringify(file)}, 'utf8')) || 0; } catch {} };
    look();
    setInterval(look, 50).unref();
    Date.now = () => machine() + shift;
  `;
  return ['--import', `data:text/javascript,${encodeURIComponent(preload)}`];
}
