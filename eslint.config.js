import hooks from 'eslint-plugin-react-hooks';
import tseslint from 'typescript-eslint';

export default tseslint.config(
  { ignores: ['node_modules/', '.build/', 'out/'] },
  ...tseslint.configs.strict,
  ...tseslint.configs.stylistic,
  {
    rules: {
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-non-null-assertion': 'off',
      eqeqeq: 'error',
      'max-lines': ['error', { max: 400 }],
      'no-console': 'error',
    },
  },
  { files: ['electron/command/**', 'tests/bench/**', 'tests/soak/**', 'tests/looks/**'], rules: { 'no-console': 'off' } },
  { files: ['renderer/**'], ...hooks.configs.flat.recommended },
  { files: ['core/**/*.ts'], rules: { 'no-restricted-globals': ['error', 'Date', 'Intl', 'process', 'Buffer', 'console', 'setTimeout'] } },
);
