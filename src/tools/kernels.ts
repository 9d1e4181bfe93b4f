// Writes what is generated of the model: the places of components, then, from the table of processes, the kernels of the inner loop.
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { componentsText } from '../model/kernel/generate/componentsText';

const MODEL = fileURLToPath(new URL('../model/', import.meta.url));

function write(path: string, text: string): void {
  writeFileSync(`${MODEL}${path}`, text);
  process.stdout.write(`src/model/${path}\n`);
}

// First of all, since the process files name components that may be new.
write('components.ts', componentsText());
const { kernelTexts } = await import('../model/kernel/generate/kernelTexts');
for (const [path, text] of Object.entries(kernelTexts())) write(path, text);
