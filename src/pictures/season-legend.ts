/** The legend of the season picture: what each shade and sign means. */
import { pictureWords as words, stageWords } from '../words/picture-words.js';
import { mark, type MarkSpec, textMark } from './chart-mark.js';
import { ink, stageColour, stages } from './palette.js';

/** Two lines, the first one's middle at `y`; stages are spaced by the room that their words take. */
export function legendMarks(y: number): MarkSpec[] {
  const second = y + 44;
  let x = 0;
  const keys = stages.flatMap((stage) => {
    const at = x;
    x += 60 + stageWords[stage].length * 13.4;
    return [
      mark('rect', {
        x: at,
        width: 34,
        y: y - 14,
        height: 28,
        fill: stageColour[stage],
        stroke: ink,
        strokeWidth: 0.6,
      }),
      textMark({ x: at + 42, y, text: stageWords[stage] }),
    ];
  });
  return [
    ...keys,
    mark('rect', { x: 0, width: 34, y: second - 14, height: 28, stroke: ink, strokeWidth: 2.5, strokeDash: [7, 5], cornerRadius: 5 }), // prettier-ignore
    textMark({ x: 42, y: second, text: words.expected }),
    mark('symbol', { x: 278, y: second, shape: 'triangle-down', size: 240, fill: ink }),
    textMark({ x: 296, y: second, text: words.pinched }),
    mark('rect', { x: 432, width: 34, y: second - 14, height: 28, stroke: '#d9d9d2', fill: '#f4f4f0' }),
    mark('rect', {
      x: 432,
      width: 34,
      y: second - 5,
      height: 10,
      fill: stageColour.rooted,
      stroke: ink,
      strokeWidth: 0.6,
    }),
    textMark({ x: 474, y: second, text: words.thinned }),
  ];
}
