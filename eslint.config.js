import js from '@eslint/js';
import regexp from 'eslint-plugin-regexp';
import tseslint from 'typescript-eslint';

export default tseslint.config(
  { ignores: ['dist/', 'node_modules/', 'demo-out/'] },
  js.configs.recommended,
  tseslint.configs.recommended,
  regexp.configs['flat/recommended'],
  {
    rules: {
      // A note is hostile input: no pattern may backtrack beyond linear time.
      'regexp/no-super-linear-backtracking': ['error', { report: 'certain' }],
      'regexp/no-super-linear-move': ['error', { report: 'certain' }],
      'regexp/no-unused-capturing-group': 'error',
      'no-console': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_' }],
      '@typescript-eslint/consistent-type-imports': 'error',
    },
  },
  {
    files: ['src/**/*.ts'],
    rules: {
      // The clock, chance and the environment live at the edge (calendar/clock.ts, settings.ts, main.ts).
      'no-restricted-syntax': [
        'error',
        {
          selector: "NewExpression[callee.name='Date'][arguments.length=0]",
          message: 'Take the time from a Clock.',
        },
        {
          selector: "MemberExpression[object.name='Date'][property.name='now']",
          message: 'Take the time from a Clock.',
        },
        {
          selector: "MemberExpression[object.name='Math'][property.name='random']",
          message: 'Chance is supplied by main.ts.',
        },
        {
          selector: "MemberExpression[object.name='process'][property.name='env']",
          message: 'Settings are read in settings.ts.',
        },
        { selector: 'ExportDefaultDeclaration', message: 'No default exports.' },
      ],
    },
  },
  {
    // Lists of phrases may say the same thing twice in longer words; what matters there is that none backtracks.
    files: ['src/language/**/*.ts'],
    rules: {
      'regexp/no-dupe-disjunctions': 'off',
      'regexp/no-contradiction-with-assertion': 'off',
    },
  },
  {
    files: ['src/calendar/clock.ts', 'src/settings.ts', 'src/main.ts'],
    rules: { 'no-restricted-syntax': 'off' },
  },
);
