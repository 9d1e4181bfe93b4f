// The journeys marked @long: minutes by themselves, run with the long tests.
import { defineConfig } from '@playwright/test';
import usual from './playwright.config';

export default defineConfig({ ...usual, grep: /@long/, grepInvert: [] });
