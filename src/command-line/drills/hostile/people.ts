/** Who writes in the hostile drill, each with names that none of the others knows. */

export interface Corner {
  readonly chat: number;
  /** Ids of those who write here; more than one in a group. */
  readonly people: readonly number[];
  /** Varieties of this ledger alone; none is ever named in another chat. */
  readonly varieties: readonly string[];
}

export const bea: Corner = { chat: 7, people: [7], varieties: ['Quill Saffron', 'Otter Vesper'] };
export const finn: Corner = { chat: 8, people: [8], varieties: ['Gorse Halo', 'Tansy Lockett'] };
export const group: Corner = { chat: -100_500, people: [7, 666], varieties: ['Harrow Pike', 'Sedge Minnow'] };
/** Has nothing of her own. */
export const mallory: Corner = { chat: 666, people: [666], varieties: [] };

export const corners = [bea, finn, group, mallory] as const;

/** Names that must never be read in a corner. */
export function secretsFrom(corner: Corner): readonly string[] {
  return corners.filter((each) => each !== corner).flatMap(({ varieties }) => varieties);
}

export function isGroup({ chat }: Corner): boolean {
  return chat < 0;
}

const nameOf = new Map([
  [7, 'Bea'],
  [8, 'Finn'],
  [666, '<b>Mal</b>\u202Elory'],
]);

/** A message as the Bot API would bring it. */
export function messageIn(
  corner: Corner,
  from: number,
  message: number,
  atMs: number,
  content: object,
): object {
  return {
    message_id: message,
    date: Math.floor(atMs / 1000),
    from: { id: from, is_bot: false, first_name: nameOf.get(from) },
    chat: isGroup(corner)
      ? { id: corner.chat, type: 'supergroup', title: 'Bench' }
      : { id: corner.chat, type: 'private', first_name: nameOf.get(from) },
    ...content,
  };
}
