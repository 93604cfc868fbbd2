/** Words of plants that are past saving: what is thrown somewhere so is thrown out. */
import { whole } from '../../phrases.js';

export const RUINED = whole`
  dead|died|dying|gone|collapsed|wilted|rotten|rotted|rotting|mush|mushy|slimy|mouldy|moldy|brown|black|blackened
  cooked|fried|frazzled|scorched|parched|dried|crisp|crispy|shrivelled|shriveled|floppy|flopped|limp|manky|squishy|frosted|frozen|snapped|broken|broke
`;
