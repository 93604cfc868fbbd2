/** Names of people, where plants come from or go to them. */
import { wordsOf } from '../../phrases.js';

const TITLES: ReadonlySet<string> = new Set(wordsOf`
  mr mrs ms miss mister dr doctor auntie aunt aunty uncle nan nana gran granny grandma grandad grandpa sister brother cousin father fr lady sir old
`);

/** Given names that growers tell of. */
const GIVEN: ReadonlySet<string> = new Set(wordsOf`
  adam agnes aidan alan albert alex alice alison amanda amy andrea andrew andy angela ann anna anne annie anthony arthur audrey barbara barry beatrice ben bernard
  beryl beth betty bill billy bob brenda brian bridget bridie carol caroline catherine cathy charles charlie chris christine claire clare clive colin colm connie craig
  daisy dan daniel dave david dawn deb debbie debs dee deirdre denis dennis derek des diana diane dick donna doreen doris dorothy doug dougie eamon ed eddie edith edna
  eileen elaine elizabeth ellen elsie emily emma enid eric erica ernest ethel eva eve evelyn fiona florence fran frances frank fred freda gail gary gavin gemma geoff george
  gerald gerry gillian gina gladys gordon grace graham greg gwen harold harry hazel heather helen henry hilary hilda howard hugh ian irene iris isobel ivy jack jackie jacky james
  jan jane janet janice jason jean jeff jen jenny jess jessica jill jim jimmy jo joan joanne joe john josie joyce judith judy julia julie june karen karl kate kath kathleen kathy katie
  keith ken kenneth kevin kim kirsty laura lauren len leonard les lesley lilian lily linda lisa liz lorna lorraine louise lucy lynn lynne mabel maggie malcolm marcus margaret maria marian marie
  marion marjorie mark martha martin mary maura maureen mavis megan mel michael michelle mick mike millie moira molly monica muriel nancy neil nell nick nicola nigel noel nora norah norma
  norman nuala olive oliver oonagh orla oscar paddy pam pamela pat patricia patrick paul paula pauline peg peggy penny pete peter petra phil philip phyllis pippa polly priya rachel ralph ray rebecca
  reg richard rita rob robert robin roger ron ronnie rory rose rosemary ross roy ruby ruth ryan sally sam samantha sandra sarah sean shane sharon sheila shirley sid sile simon siobhan sophie stan stella
  stephen steve stewart stuart sue susan suzanne sylvia tamsin ted terry tess theresa thomas tim tina toby tom tommy tony tracey tracy trevor trish una ursula val valerie vera vic victor victoria vince violet
  vivian walter wendy will william winnie winston yvonne zoe
`);

/** A nursery or shop by one of its words: "Thornbury Plants", "Hexley Market". */
const FIRMS: ReadonlySet<string> = new Set(wordsOf`
  nursery nurseries farm farms plants market garden gardens centre center show fair fete growers grower herbs seeds sons bros ltd trust society club hall college
  school church stall shop stores sale exchange swap dahlias fuchsias pelargoniums salvias perennials
  court palace lane road street avenue close park house cottage lodge manor abbey castle
`);

/** "Auntie breda", "granny tuft"; no "old faithful". */
export const isTitled = ([first = '', second]: readonly string[]): boolean =>
  second !== undefined && TITLES.has(first) && first !== 'old';

/** "mary dolan", "auntie joan", "mrs pike". */
export function isPerson(words: readonly string[]): boolean {
  const [first = '', second] = words.map((word) => word.toLowerCase());
  if (second === undefined) return GIVEN.has(first) || TITLES.has(first);
  return (
    GIVEN.has(first) || (TITLES.has(first) && (GIVEN.has(second) || /^(?:mrs?|ms|miss|dr)$/.test(first)))
  );
}

/** "Thornbury Plants", "Marsh & Sons". */
export const isFirm = (words: readonly string[]): boolean =>
  words.some((word) => FIRMS.has(word.toLowerCase()));
