/** The fonts that are shipped with the program, the same on every machine, and the scripts that they cover. */
import { createRequire } from 'node:module';

const locate = createRequire(import.meta.url).resolve;

/** Family name under which the shipped fonts answer in drawings. */
export const fontFamily = 'Noto Sans';

export interface FontFile {
  readonly name: string;
  readonly regular: string;
  readonly bold: string;
}

/** Noto Sans (SIL Open Font License 1.1), from the packages that carry its files. First wins where two cover a letter. */
export const shippedFonts: readonly FontFile[] = [
  {
    name: 'Noto Sans',
    regular: locate('@expo-google-fonts/noto-sans/400Regular/NotoSans_400Regular.ttf'),
    bold: locate('@expo-google-fonts/noto-sans/700Bold/NotoSans_700Bold.ttf'),
  },
  {
    name: 'Noto Sans Hebrew',
    regular: locate('@expo-google-fonts/noto-sans-hebrew/400Regular/NotoSansHebrew_400Regular.ttf'),
    bold: locate('@expo-google-fonts/noto-sans-hebrew/700Bold/NotoSansHebrew_700Bold.ttf'),
  },
];
