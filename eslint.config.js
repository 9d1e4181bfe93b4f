// Lint: strict TypeScript rules, zero warnings.
import tseslint from 'typescript-eslint';

export default tseslint.config(
  { ignores: ['dist/**', 'node_modules/**', 'test-results/**', 'assets/**', '.scratch/**'] },
  ...tseslint.configs.recommended,
  {
    files: ['**/*.ts', '**/*.tsx'],
    rules: {
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-non-null-assertion': 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      'no-restricted-exports': ['error', { restrictDefaultExports: { direct: true } }],
      'prefer-const': 'error',
      eqeqeq: 'error',
    },
  },
  { files: ['*.config.ts', '*.config.js', 'tests/**/*.config.ts'], rules: { 'no-restricted-exports': 'off' } },
);
