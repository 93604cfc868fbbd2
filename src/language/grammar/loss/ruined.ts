/** Words of plants that are past saving: what is thrown somewhere so is thrown out. */
export const RUINED =
  /^(?:gone|brown|slimy|mushy|mush|rotten|rotted|rotting|dead|died|dying|mouldy|moldy|black|blackened|cooked|fried|frazzled|frosted|frozen|dried|snapped|broken|broke|shrivelled|shriveled|wilted|collapsed|scorched|parched|crisp|crispy)$/;
