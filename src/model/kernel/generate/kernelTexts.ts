// All generated files but components.ts, by their path under src/model.
import { blockText } from './blockText';
import { factorText } from './factorText';
import { planKernels } from './kernelPlan';
import { booksText, slopeText } from './slopeText';
import { idsText, keptText, ratesText, sizesText, tableText, whereText } from './placesTexts';
import { solveText } from './solveText';

export function kernelTexts(): Readonly<Record<string, string>> {
  const plan = planKernels();
  return {
    'kernel/ids.ts': idsText(plan),
    'kernel/kept.ts': keptText(plan),
    'kernel/table.ts': tableText(plan),
    'kernel/sizes.ts': sizesText(plan),
    'kernel/where.ts': whereText(),
    'kernel/rates.ts': ratesText(),
    'kernel/applyColumns.ts': slopeText(plan),
    'kernel/addExtents.ts': booksText(plan),
    'kernel/gatherCell.ts': blockText(plan),
    'kernel/factorCell.ts': factorText(plan),
    'kernel/solveCell.ts': solveText(plan),
  };
}
