/** One device with different sizes in different notes: found by `course`, where many notes are known. */
import type { CheckDefinition } from './definition.ts';

export const courseDiffers: CheckDefinition = {
  id: 'course-differs',
  kind: 'style',
  severity: 'info',
  title: 'Another note gives this device another size',
  docs: 'Two notes of the course give a device of the same name different sizes: “the triple-lumen line is 7 Fr” here, 9 Fr there. Both places are shown; neither is called wrong.',
  run: () => [],
};
